#!/bin/sh
# Starts Muralbench: without arguments or with files the desktop, with a verb the work without a screen.
# Needs Java 17 or newer: the one in the folder jre beside this script, in JAVA_HOME, or on the path.
here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
java=java
[ -n "$JAVA_HOME" ] && java=$JAVA_HOME/bin/java
[ -x "$here/jre/bin/java" ] && java=$here/jre/bin/java
command -v "$java" >/dev/null || { echo "muralbench: no Java found. Install Java 17 or newer." >&2; exit 2; }
case "${1:-}" in
  demo|new|pieces|sheets|cuts|check|export|-h|--help|-V|--version)
    # The framework takes words such as -clean for itself, so every word goes with a mark that the command takes off.
    for word; do shift; set -- "$@" "=$word"; done
    exec "$java" -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -Dmuralbench.cli.quoted=true \
      "-Dosgi.configuration.area=@user.home/.muralbench/configuration" \
      -jar "$here"/plugins/org.eclipse.equinox.launcher_*.jar -nosplash -data @none \
      -application muralbench.cli.application "$@" ;;
  *)
    exec "$java" -XstartOnFirstThread -Xdock:name=Muralbench \
      "-Dosgi.configuration.area=@user.home/.muralbench/configuration" \
      -jar "$here"/plugins/org.eclipse.equinox.launcher_*.jar -nosplash "$@" ;;
esac
