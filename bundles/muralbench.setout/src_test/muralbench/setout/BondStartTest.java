// SPDX-License-Identifier: EPL-2.0
package muralbench.setout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import muralbench.base.InputException;
import muralbench.setout.bond.Bond;
import muralbench.setout.bond.BondRegistry;
import muralbench.setout.bond.BondRequest;
import muralbench.setout.bond.BondSetting;
import org.junit.jupiter.api.Test;

/** What a dialog begins with when a person chooses a bond, and what it offers. */
class BondStartTest {
  private static final BondRegistry BONDS = BondRegistry.standard();
  private static final TileSpec TILE = new TileSpec("T", 100, 100, 0, 0, -1);

  @Test
  void everyBondCanBeLaidAsItBegins() throws Exception {
    for (Bond bond : BONDS.all()) {
      BondRequest sample = bond.sample();
      Map<String, String> start = bond.start(1800, 1200, sample.tile(), sample.joint());
      assertNotNull(bond.lay(new BondRequest(sample.tile(), sample.joint(), sample.offset(), start)), bond.kind());
    }
  }

  @Test
  void ringsFillTheLargestFaceOfThePanelAndLeaveADisc() {
    Map<String, String> start = BONDS.find("rings").orElseThrow().start(1800, 1200, TILE, 3);
    assertEquals("600.0 mm", start.get("radius"));
    assertEquals(6, start.get("rings").split(",").length);
  }

  @Test
  void ringsOnASmallPanelBeginWithTheSample() {
    Bond rings = BONDS.find("rings").orElseThrow();
    assertEquals(rings.sample().settings(), rings.start(50, 50, TILE, 3));
  }

  @Test
  void onlyBondsOfCoursesAskForAnOffset() {
    List<String> kinds = BONDS.all().stream().filter(Bond::takesOffset).map(Bond::kind).toList();
    assertEquals(List.of("grid", "running"), kinds);
  }

  @Test
  void theChoicesOfASettingAreThoseThatTheBondTakes() throws Exception {
    for (Bond bond : BONDS.all()) {
      for (BondSetting setting : bond.settings()) {
        for (String word : setting.form() == BondSetting.Form.CHOICE ? setting.words() : List.<String>of()) {
          assertNotNull(bond.lay(request(bond, setting.name(), word)), word);
          assertThrows(InputException.class, () -> bond.lay(request(bond, setting.name(), word + "?")));
        }
      }
    }
  }

  private static BondRequest request(Bond bond, String name, String value) {
    BondRequest sample = bond.sample();
    Map<String, String> settings = new HashMap<>(sample.settings());
    settings.put(name, value);
    return new BondRequest(sample.tile(), sample.joint(), sample.offset(), settings);
  }
}
