// SPDX-License-Identifier: EPL-2.0
/** Writing the documents of a mural: the wizard and the run in the background. */
package muralbench.app.internal.export;
