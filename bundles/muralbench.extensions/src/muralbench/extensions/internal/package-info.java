// SPDX-License-Identifier: EPL-2.0
/** Reading of the extension registry. */
package muralbench.extensions.internal;
