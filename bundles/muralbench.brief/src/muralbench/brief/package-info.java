// SPDX-License-Identifier: EPL-2.0
/** The JSON brief: text in, model out, errors by JSON pointer. */
package muralbench.brief;
