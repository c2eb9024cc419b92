// SPDX-License-Identifier: EPL-2.0
package muralbench.setout.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import muralbench.base.length.LengthUnit;
import muralbench.setout.TileSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers in inches as in ANSI A108.02 §4.3.7 and §4.3.8, quoted in trade letters and columns, and worked out from them. */
class JointRulesTest {
  private static final double IN = 25.4;

  private static JointRules rules(double width, double height, double spread, String tileClass, double warpage,
      double offset) {
    TileSpec tile = new TileSpec("T", width * IN, height * IN, 0, spread * IN, -1).withClass(tileClass,
        warpage < 0 ? -1 : warpage * IN);
    return new JointRules(tile, offset, tile.width());
  }

  /** The printed example is 1/16 in, which asks for 3/16 in. */
  @ParameterizedTest
  @CsvSource({"0.0625, 0.1875", "0.030, 0.090", "0.040, 0.120", "0.125, 0.375", "0.010, 0.0625", "0, 0.0625"})
  void leastIsThreeTimesTheSpreadAndNeverUnderASixteenth(double spread, double least) {
    assertEquals(least * IN, rules(6, 6, spread, TileSpec.NOT_KNOWN, -1, 0).least(), 1e-9);
  }

  /** The printed example is rectified tile with 1/32 in of warpage: 1/8 + 1/32 = 5/32 in. Exactly 15 in is not over. */
  @ParameterizedTest
  @CsvSource({"24, rectified, 0.03125, 0.5, 0.15625", "24, rectified, 0, 0.5, 0.125", "24, calibrated, 0, 0.3, 0.1875",
      "24, calibrated, 0.05, 0.3, 0.2375", "24, natural, 0, 0.3, 0.1875", "24, not-known, -1, 0.3, 0.125",
      "24, rectified, 0.03125, 0, 0.0625", "15, rectified, 0.03125, 0.5, 0.0625", "15.1, rectified, 0, 0.5, 0.125"})
  void largeTileInOffsetCoursesAsksForMore(double side, String tileClass, double warpage, double offset, double least) {
    assertEquals(least * IN, rules(6, side, 0, tileClass, warpage, offset).least(), 1e-9);
    assertEquals(least * IN, rules(side, 6, 0, tileClass, warpage, offset).least(), 1e-9);
  }

  /** Joint 1/8 with 0.030 of warpage: 0.06125 in; exactly 1/4: 1/16 in; 0.249: 1/32 in. */
  @ParameterizedTest
  @CsvSource({"0.125, 0.030, 0.06125", "0.25, 0, 0.0625", "0.249, 0, 0.03125", "0.25, 0.02, 0.0825",
      "0.0625, -1, 0.03125"})
  void lippageFollowsJointAndWarpage(double joint, double warpage, double lippage) {
    assertEquals(lippage * IN, rules(6, 6, 0, "rectified", warpage, 0).lippage(joint * IN), 1e-9);
  }

  /** Practical minima by a trade letter: calibrated 3/16, rectified 1/8 in. Spread 0.030: 0.090, next 1/32 up is 3/32. */
  @ParameterizedTest
  @CsvSource({"0, rectified, 0.125", "0, calibrated, 0.1875", "0, not-known, 0.125", "0.030, rectified, 0.125",
      "0.050, rectified, 0.15625", "0.125, natural, 0.375"})
  void theJointToProposeFollowsClassAndSpread(double spread, String tileClass, double usual) {
    assertEquals(usual * IN, rules(6, 6, spread, tileClass, -1, 0).usual(LengthUnit.INCH), 1e-9);
  }

  @Test
  void inMillimetresItIsRoundedUpToHalves() {
    assertEquals(3.5, rules(6, 6, 0, "rectified", -1, 0).usual(LengthUnit.MILLIMETRE), 1e-9);
    assertEquals(5, rules(6, 6, 0, "calibrated", -1, 0).usual(LengthUnit.MILLIMETRE), 1e-9);
  }

  /** Side being offset over 15 in: 33 % at most; a third counts as 33 %. */
  @ParameterizedTest
  @CsvSource({"24, 6, 0.5, true", "24, 6, 0.3333333333, false", "6, 24, 0.5, false", "15, 6, 0.5, false"})
  void largeTileIsOffsetByAThirdAtMost(double width, double height, double offset, boolean tooFar) {
    assertEquals(tooFar, rules(width, height, 0, "rectified", 0, offset).isOffsetTooFar());
  }
}
