// SPDX-License-Identifier: EPL-2.0
package muralbench.app.internal.create;

/**
 * The field tile as it is being filled in, millimetres.
 *
 * @param width work size across the face
 * @param height work size up the face
 * @param thickness thickness, 0 when not known
 * @param joint width of the joint
 */
record TileDraft(double width, double height, double thickness, double joint) {}
