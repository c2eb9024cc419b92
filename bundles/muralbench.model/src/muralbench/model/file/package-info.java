// SPDX-License-Identifier: EPL-2.0
/** The .mural file: reading, migration and atomic saving. */
package muralbench.model.file;
