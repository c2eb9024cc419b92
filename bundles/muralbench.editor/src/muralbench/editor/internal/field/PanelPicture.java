// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.field;

import java.util.Optional;
import muralbench.editor.internal.geometry.Frame;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Vec;

/**
 * What is painted of one panel.
 *
 * @param id its id
 * @param title its title, may be empty
 * @param size its size in words
 * @param frame the frame of its outline
 * @param outline its edge, if it can be read
 * @param field its pieces, if they are ready
 * @param problem why it cannot be set out, if it cannot
 * @param focus the point its pattern is laid to, if it has one
 */
public record PanelPicture(String id, String title, String size, Frame frame, Optional<Contour> outline,
    Optional<PieceField> field, Optional<String> problem, Optional<Vec> focus) {}
