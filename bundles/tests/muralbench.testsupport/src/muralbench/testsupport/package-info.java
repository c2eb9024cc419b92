// SPDX-License-Identifier: EPL-2.0
/** What every bond and every exporter promises, as tests that the program's own and those of others inherit. */
package muralbench.testsupport;
