// SPDX-License-Identifier: EPL-2.0
/** Making a new mural: the wizard, its pages and what a person has filled in so far. */
package muralbench.app.internal.create;
