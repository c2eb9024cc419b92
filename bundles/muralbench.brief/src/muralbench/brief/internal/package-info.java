// SPDX-License-Identifier: EPL-2.0
/** The steps from text to mural: strict JSON, the schema with messages of our own, the values and their checks. */
package muralbench.brief.internal;
