// SPDX-License-Identifier: EPL-2.0
/** Fills the plain registries from the extension registry. */
package muralbench.extensions;
