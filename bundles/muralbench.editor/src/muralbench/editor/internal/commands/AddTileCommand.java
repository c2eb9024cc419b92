// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.commands;

import muralbench.base.Messages;
import muralbench.editor.ModelCommand;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.TileKind;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Adds a kind of tile: a copy of the last one, or 6 in square where there is none. */
public final class AddTileCommand extends ModelCommand {
  private static final Messages TEXTS = Messages.of(AddTileCommand.class);
  private static final double USUAL_SIZE = 6 * 25.4;

  private TileKind tile;

  /** A command for a mural. */
  public AddTileCommand(Mural mural) {
    super(TEXTS.text("add.tile", "id", Names.freeTileId(mural)), mural);
  }

  /** The kind of tile that was added. */
  public TileKind tile() {
    return tile;
  }

  @Override
  protected void change() {
    int count = mural().getTileKinds().size();
    if (count > 0) {
      tile = EcoreUtil.copy(mural().getTileKinds().get(count - 1));
    } else {
      tile = MuralFactory.eINSTANCE.createTileKind();
      tile.setWidth(USUAL_SIZE);
      tile.setHeight(USUAL_SIZE);
    }
    tile.setId(Names.freeTileId(mural()));
    mural().getTileKinds().add(tile);
  }
}
