// SPDX-License-Identifier: EPL-2.0
/** Which joints the rules of the trade allow for a tile. */
package muralbench.setout.joint;
