// SPDX-License-Identifier: EPL-2.0
/**
 * The inside of a .mural file: the zip and its limits, the manifest, the XMI with its load options, migration of older
 * schema versions and the check that nothing is saved that could not be read again.
 */
package muralbench.model.file.internal;
