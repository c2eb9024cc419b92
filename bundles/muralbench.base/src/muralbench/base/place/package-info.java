// SPDX-License-Identifier: EPL-2.0
/** What places on the wall may be called. */
package muralbench.base.place;
