// SPDX-License-Identifier: EPL-2.0
/** Site measurements of a wall, adjusted by least squares into its true corners. */
package muralbench.setout.survey;
