// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import muralbench.base.InputException;
import muralbench.base.Progress;
import muralbench.base.length.LengthUnit;
import muralbench.setout.OriginSpec;
import muralbench.setout.PanelSpec;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.fit.Alternative.Kind;
import muralbench.setout.geometry.Box;
import muralbench.setout.geometry.Contour;
import muralbench.setout.geometry.Segment;
import muralbench.setout.geometry.Vec;
import muralbench.setout.internal.FaceRow;
import muralbench.setout.internal.PanelEngine;
import muralbench.setout.joint.JointRules;

/** Works out which changes of a panel may bring whole tiles or better cuts. */
final class Proposals {
  private static final double EXACT = 1e-6;
  private static final int STARTS = 4;
  private static final int JOINTS = 4;
  private static final int MARGINS = 3;

  private final PanelSpec panel;
  private final Optional<FaceRow> across;
  private final Optional<FaceRow> up;

  private final BondRegistry bonds;

  private Proposals(PanelSpec panel, Optional<FaceRow> across, Optional<FaceRow> up, BondRegistry bonds) {
    this.panel = panel;
    this.across = across;
    this.up = up;
    this.bonds = bonds;
  }

  /**
   * All changes worth setting out.
   *
   * @throws InputException if the panel itself cannot be set out
   */
  static List<Proposal> of(PanelSpec panel, BondRegistry bonds, LengthUnit units, Progress progress)
      throws InputException {
    Proposals proposals = new Proposals(panel, FaceRow.of(panel, true, bonds, units),
        FaceRow.of(panel, false, bonds, units), bonds);
    List<Proposal> all = new ArrayList<>();
    List<Vec> starts = PanelEngine.starts(panel, bonds, units, STARTS, progress);
    all.addAll(proposals.starts(starts));
    if (panel.band().isPresent()) {
      // Another joint, margin or size would ask for another border.
      return all;
    }
    all.addAll(proposals.joints());
    all.addAll(proposals.margins());
    all.addAll(proposals.sizes());
    return all;
  }

  private List<Proposal> starts(List<Vec> starts) {
    List<Proposal> all = new ArrayList<>();
    boolean balanced = panel.origin() instanceof OriginSpec.Balanced;
    if (!balanced) {
      all.add(new Proposal(Kind.TRIM,
          with(panel.joint(), panel.edgeGap(), panel.outline(), new OriginSpec.Balanced()), 0));
    }
    for (int i = 1; i < starts.size(); i++) {
      all.add(new Proposal(Kind.START,
          with(panel.joint(), panel.edgeGap(), panel.outline(), new OriginSpec.At(starts.get(i))), i));
    }
    return all;
  }

  /**
   * Joints with which n whole tiles fit: (span - n * face) / (n - 1), in the range that {@link JointRules} permit.
   */
  private List<Proposal> joints() {
    JointRules rules = JointRules.of(panel);
    double least = rules.least();
    double most = Math.min(rules.most(), Math.min(panel.tile().width(), panel.tile().height()) - EXACT);
    TreeSet<Double> fitting = new TreeSet<>();
    for (FaceRow row : rows()) {
      double span = row.span() - 2 * panel.edgeGap();
      for (int n = Math.max(2, tiles(span, row.face(), most)); n <= tiles(span, row.face(), least) + 1; n++) {
        double joint = (span - n * row.face()) / (n - 1);
        if (joint >= least - EXACT && joint <= most + EXACT && Math.abs(joint - panel.joint()) > EXACT) {
          fitting.add(joint);
        }
      }
    }
    return nearest(fitting, panel.joint(), JOINTS).stream().map(joint -> new Proposal(Kind.JOINT,
        fitted(joint, panel.edgeGap(), panel.outline()), Math.abs(joint - panel.joint()))).toList();
  }

  /** How many whole tiles go into a span. */
  private static int tiles(double span, double face, double joint) {
    return (int) Math.floor((span + joint) / (face + joint) + EXACT);
  }

  private List<FaceRow> rows() {
    return List.of(across, up).stream().flatMap(Optional::stream).toList();
  }

  /** Those of some lengths that are nearest to one, without near equals. */
  private static List<Double> nearest(TreeSet<Double> lengths, double to, int most) {
    List<Double> apart = new ArrayList<>();
    for (double length : lengths) {
      if (apart.isEmpty() || length - apart.get(apart.size() - 1) > EXACT) {
        apart.add(length);
      }
    }
    return apart.stream().sorted(Comparator.comparingDouble(length -> Math.abs(length - to))).limit(most).toList();
  }

  /** Margins between a joint and half a tile that leave room for whole tiles. */
  private List<Proposal> margins() {
    double half = Math.min(panel.tile().width(), panel.tile().height()) / 2;
    double joint = panel.joint();
    TreeSet<Double> fitting = new TreeSet<>();
    for (FaceRow row : rows()) {
      for (int n = tiles(row.span(), row.face(), joint); n >= 1; n--) {
        double margin = (row.span() - n * row.face() - (n - 1) * joint) / 2;
        if (margin > half + EXACT) {
          break;
        }
        if (margin >= joint - EXACT && margin > EXACT && Math.abs(margin - panel.edgeGap()) > EXACT) {
          fitting.add(margin);
        }
      }
    }
    return nearest(fitting, panel.edgeGap(), MARGINS).stream().map(margin -> new Proposal(Kind.EDGE,
        fitted(joint, margin, panel.outline()), Math.abs(margin - panel.edgeGap()))).toList();
  }

  /** The sizes next to that of a rectangle that whole tiles fill. */
  private List<Proposal> sizes() {
    Box box = panel.outline().box();
    List<Proposal> sizes = new ArrayList<>();
    if (upright(panel.outline()) && panel.survey().isEmpty() && !rows().isEmpty()) {
      for (double width : lengths(across, box.width())) {
        for (double height : lengths(up, box.height())) {
          double amount = Math.abs(width - box.width()) + Math.abs(height - box.height());
          if (amount > EXACT) {
            Contour outline = Contour.rectangle(box.minX(), box.minY(), width, height);
            sizes.add(new Proposal(Kind.SIZE, fitted(panel.joint(), panel.edgeGap(), outline), amount));
          }
        }
      }
    }
    return sizes;
  }

  /** The length of a panel as it is if it fits or cannot, else the next shorter and longer one. */
  private List<Double> lengths(Optional<FaceRow> row, double now) {
    if (row.isEmpty()) {
      return List.of(now);
    }
    double face = row.get().face();
    double joint = panel.joint();
    int n = tiles(now - 2 * panel.edgeGap(), face, joint);
    double shorter = n * face + (n - 1) * joint + 2 * panel.edgeGap();
    if (Math.abs(shorter - now) < EXACT) {
      return List.of(now);
    }
    double longer = shorter + face + joint;
    return n < 1 ? List.of(longer) : List.of(shorter, longer);
  }

  private static boolean upright(Contour outline) {
    return outline.segments().size() == 4 && outline.straight()
        && outline.segments().stream().allMatch(Proposals::straightUp);
  }

  private static boolean straightUp(Segment side) {
    Vec along = side.tangent(0);
    return Math.min(Math.abs(along.x()), Math.abs(along.y())) < EXACT;
  }

  /** Whole tiles are found by the balanced start of the panel without its openings; a focal point stays. */
  private PanelSpec fitted(double joint, double edgeGap, Contour outline) {
    OriginSpec.Balanced balanced = panel.origin() instanceof OriginSpec.Balanced now ? now : new OriginSpec.Balanced();
    PanelSpec plain = with(joint, edgeGap, outline, balanced);
    if (panel.openings().isEmpty() || balanced.focus().isPresent()) {
      return plain;
    }
    PanelSpec bare = new PanelSpec(panel.id(), panel.title(), panel.surface(), panel.mounting(), panel.tile(), joint,
        edgeGap, outline, List.of(), panel.bond(), balanced, panel.survey());
    try {
      Vec start = PanelEngine.starts(bare, bonds, LengthUnit.MILLIMETRE, 1, Progress.NONE).get(0);
      return with(joint, edgeGap, outline, new OriginSpec.At(start));
    } catch (InputException e) {
      // The set-out of the proposal itself will say why it cannot be.
      return plain;
    }
  }

  private PanelSpec with(double joint, double edgeGap, Contour outline, OriginSpec origin) {
    if (panel.band().isPresent()) {
      return panel.withOrigin(origin);
    }
    return new PanelSpec(panel.id(), panel.title(), panel.surface(), panel.mounting(), panel.tile(), joint, edgeGap,
        outline, panel.openings(), panel.bond(), origin, panel.survey(), panel.movement(), panel.making(), panel.board());
  }
}
