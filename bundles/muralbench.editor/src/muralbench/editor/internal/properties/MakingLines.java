// SPDX-License-Identifier: EPL-2.0
package muralbench.editor.internal.properties;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import muralbench.base.Messages;
import muralbench.editor.OpenMural;
import muralbench.editor.internal.properties.Entries.Range;
import muralbench.model.Making;
import muralbench.model.Mural;
import muralbench.model.MuralFactory;
import muralbench.model.Painting;
import muralbench.model.Spare;
import muralbench.setout.order.Allowances;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The lines of a mural about making its pieces and ordering its tile. */
final class MakingLines {
  private static final String MAKING = "making";
  private static final String SPARES = "spares";
  private static final Messages TEXTS = ModelProperties.TEXTS;

  /** Whether something is so, as a choice. */
  enum Kept {
    /** It is. */
    YES,
    /** It is not. */
    NO
  }

  private final OpenMural open;
  private final Mural mural;

  MakingLines(OpenMural open) {
    this.open = open;
    this.mural = open.mural();
  }

  List<Property> lines() {
    List<Property> lines = new ArrayList<>();
    lines.add(Entries.choice("painted", MAKING, Painting.class, () -> making().getPainted(),
        to -> owned().setPainted(to)));
    if (making().getPainted() == Painting.AFTER_CUTTING) {
      lines.add(Entries.length("kerf", MAKING, open.units(), Range.NOT_NEGATIVE, () -> making().getKerf(),
          to -> owned().setKerf(to)));
      lines.add(side("factoryLeft", Making::isFactoryLeft, Making::setFactoryLeft));
      lines.add(side("factoryRight", Making::isFactoryRight, Making::setFactoryRight));
      lines.add(side("factoryTop", Making::isFactoryTop, Making::setFactoryTop));
      lines.add(side("factoryBottom", Making::isFactoryBottom, Making::setFactoryBottom));
    }
    bonds().forEach(bond -> lines.add(spare(bond)));
    return lines;
  }

  /** The making, or one that says what holds where there is none. */
  private Making making() {
    return mural.getMaking() == null ? MuralFactory.eINSTANCE.createMaking() : mural.getMaking();
  }

  private Making owned() {
    if (mural.getMaking() == null) {
      mural.setMaking(MuralFactory.eINSTANCE.createMaking());
    }
    return mural.getMaking();
  }

  private Property side(String id, Function<Making, Boolean> get, BiConsumer<Making, Boolean> set) {
    String[] labels = {TEXTS.text("kept.YES"), TEXTS.text("kept.NO")};
    return Property.choice(id, MAKING, labels, () -> (get.apply(making()) ? Kept.YES : Kept.NO).ordinal(),
        index -> set.accept(owned(), index == Kept.YES.ordinal()));
  }

  /** The bonds of the mural, those that something else was said of, and the two groups of all others. */
  private Set<String> bonds() {
    Set<String> bonds = new LinkedHashSet<>();
    mural.getPanels().stream().filter(panel -> panel.getBond() != null).map(panel -> panel.getBond().getKind())
        .forEach(bonds::add);
    mural.getSpares().stream().map(Spare::getBond).filter(Objects::nonNull).forEach(bonds::add);
    bonds.remove(Allowances.OTHER);
    bonds.remove(Allowances.TURNED);
    bonds.add(Allowances.TURNED);
    bonds.add(Allowances.OTHER);
    return bonds;
  }

  /** A blank text goes back to common practice. */
  private Property spare(String bond) {
    return Property.text(LineNames.SPARE + bond, SPARES, () -> shown(percent(bond)),
        text -> text.isBlank() ? shown(usual(bond)) : shown(BigDecimal.valueOf(Entries.parsed(text))),
        text -> text.isBlank() || Entries.isNumber(text, true) ? Optional.empty()
            : Optional.of(TEXTS.text("refuse.percent")), text -> set(bond, text));
  }

  private static String shown(BigDecimal percent) {
    return percent.stripTrailingZeros().toPlainString();
  }

  private BigDecimal percent(String bond) {
    return find(bond).map(Spare::getPercent).map(BigDecimal::valueOf).orElseGet(() -> usual(bond));
  }

  private BigDecimal usual(String bond) {
    Allowances usual = Allowances.commonPractice();
    return switch (bond) {
      case Allowances.TURNED -> usual.turned();
      case Allowances.OTHER -> usual.other();
      default -> usual.percent().containsKey(bond) ? usual.percent().get(bond) : percent(Allowances.OTHER);
    };
  }

  private Optional<Spare> find(String bond) {
    return mural.getSpares().stream().filter(spare -> bond.equals(spare.getBond())).findFirst();
  }

  private void set(String bond, String text) {
    if (text.isBlank()) {
      find(bond).ifPresent(EcoreUtil::remove);
      return;
    }
    Spare spare = find(bond).orElseGet(() -> {
      Spare made = MuralFactory.eINSTANCE.createSpare();
      made.setBond(bond);
      mural.getSpares().add(made);
      return made;
    });
    spare.setPercent(Entries.parsed(text));
  }
}
