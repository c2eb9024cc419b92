// SPDX-License-Identifier: EPL-2.0
/** What is worked on the panels of a mural, taken from the model: borders with their motifs. */
package muralbench.pattern.work;
