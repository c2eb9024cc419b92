// SPDX-License-Identifier: EPL-2.0
/** Walls measured on site: typing the measurements in, with the wall they make beside them. */
package muralbench.app.internal.survey;
