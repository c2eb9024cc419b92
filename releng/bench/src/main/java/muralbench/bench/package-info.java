// SPDX-License-Identifier: EPL-2.0
/** Benchmarks; each prints its figures beside a baseline measured in the same run. */
package muralbench.bench;
