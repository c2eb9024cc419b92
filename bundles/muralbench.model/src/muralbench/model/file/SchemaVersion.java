// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

/**
 * The numbers of the file format, which tell the structure of {@code mural.xmi}. A number is never used again.
 *
 * <dl>
 * <dt>1</dt>
 * <dd>One joint width for the whole mural ({@code jointWidth}), the exposure on the mural itself, and on the panel the
 * bond, the origin and whether it is a floor as texts ({@code bond="running 1/2"}, {@code origin="12.7 0"},
 * {@code floor="true"}).</dd>
 * <dt>2</dt>
 * <dd>A joint for each panel; site, bond and origin are objects of their own; {@code surface} instead of {@code floor};
 * settings, studio books and panel works as room for what follows. Since then also outlines from site measurements, which
 * an older program refuses by name.</dd>
 * </dl>
 *
 * <p>A change that an older program would misread takes the next number, a migration step from the number before and a
 * kept file of it among the tests.
 */
public final class SchemaVersion {
  /** The oldest version that is still read. */
  public static final int OLDEST = 1;

  /** The version that is written. */
  public static final int CURRENT = 2;

  private SchemaVersion() {}
}
