// SPDX-License-Identifier: EPL-2.0
/** Movement joints: how wide, how far apart and on which joint lines; thermal movement. */
package muralbench.setout.movement;
