// SPDX-License-Identifier: EPL-2.0
package org.eclipse.jface.util;

/**
 * The argument checks that the graphical framework of 2007 still calls by this name; the platform has since moved them
 * to another package. Only what the framework links against is here.
 */
public final class Assert {
  private Assert() {}

  /** Throws an {@link IllegalArgumentException} unless {@code expression} holds; returns it otherwise. */
  public static boolean isLegal(boolean expression) {
    return isLegal(expression, "");
  }

  /** Throws an {@link IllegalArgumentException} with the message unless {@code expression} holds. */
  public static boolean isLegal(boolean expression, String message) {
    if (!expression) {
      throw new IllegalArgumentException(message);
    }
    return expression;
  }

  /** Throws an {@link IllegalStateException} if {@code object} is null. */
  public static void isNotNull(Object object) {
    isNotNull(object, "");
  }

  /** Throws an {@link IllegalStateException} with the message if {@code object} is null. */
  public static void isNotNull(Object object, String message) {
    if (object == null) {
      throw new IllegalStateException("null argument; " + message);
    }
  }

  /** Throws an {@link IllegalStateException} unless {@code expression} holds; returns it otherwise. */
  public static boolean isTrue(boolean expression) {
    return isTrue(expression, "");
  }

  /** Throws an {@link IllegalStateException} with the message unless {@code expression} holds. */
  public static boolean isTrue(boolean expression, String message) {
    if (!expression) {
      throw new IllegalStateException("assertion failed; " + message);
    }
    return expression;
  }
}
