// SPDX-License-Identifier: EPL-2.0
/** Safe file output. */
package muralbench.base.file;
