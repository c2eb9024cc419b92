// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import muralbench.model.Mural;
import org.eclipse.emf.common.notify.impl.AdapterImpl;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The assets of an open mural, such as pictures: bytes that are named by their content. They are read and saved with
 * the mural; what is not referred to is kept all the same. A copy of a mural starts without assets.
 *
 * <p>Not safe for use by several threads at once.
 */
public final class Assets {
  private final SortedMap<String, byte[]> contents = new TreeMap<>();

  private Assets() {}

  /** The assets that belong to a mural; none at first. */
  public static Assets of(Mural mural) {
    Holder holder = (Holder) EcoreUtil.getExistingAdapter(mural, Assets.class);
    if (holder == null) {
      holder = new Holder(new Assets());
      mural.eAdapters().add(holder);
    }
    return holder.assets;
  }

  /** The name of a content: its SHA-256 in 64 lower-case hexadecimal digits (FIPS 180-4). */
  public static String hash(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Adds a content, unless it is there already, and returns its name. */
  public String add(byte[] content) {
    String hash = hash(content);
    contents.putIfAbsent(hash, content.clone());
    return hash;
  }

  /** A copy of the content with this name. */
  public Optional<byte[]> find(String hash) {
    return Optional.ofNullable(contents.get(hash)).map(byte[]::clone);
  }

  /** Takes a content away; nothing happens if there is none of this name. */
  public void remove(String hash) {
    contents.remove(hash);
  }

  /** The names of all assets, sorted, as they are now and will be. */
  public SortedSet<String> hashes() {
    return Collections.unmodifiableSortedSet((SortedSet<String>) contents.keySet());
  }

  /** Ties the assets to the mural, whatever resource the mural is moved to. */
  private static final class Holder extends AdapterImpl {
    private final Assets assets;

    Holder(Assets assets) {
      this.assets = assets;
    }

    @Override
    public boolean isAdapterForType(Object type) {
      return type == Assets.class;
    }
  }
}
