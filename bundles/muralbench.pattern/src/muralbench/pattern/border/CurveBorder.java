// SPDX-License-Identifier: EPL-2.0
package muralbench.pattern.border;

/**
 * A band of one row on a curve. Further rows are bands of their own on the smaller curve that the field has, see {@link
 * CurveLayout#inside()}.
 *
 * @param curve its outer edge
 * @param row its tile: on the curve the length is measured along the middle of the row; the corner size is of no
 *     account
 * @param joint the joints it may have
 * @param permits what else may be done; on the curve pieces are shaped to measure, and their length may differ from the
 *     tile's by the permitted scale; of legs the foot may be cut; there are no centre pieces
 */
public record CurveBorder(Curve curve, BandRow row, JointRange joint, Permits permits) {}
