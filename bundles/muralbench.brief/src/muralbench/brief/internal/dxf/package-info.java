// SPDX-License-Identifier: EPL-2.0
/** Reads the outline of a panel from a DXF drawing: text in, path data in millimetres out. */
package muralbench.brief.internal.dxf;
