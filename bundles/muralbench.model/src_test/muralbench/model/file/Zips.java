// SPDX-License-Identifier: EPL-2.0
package muralbench.model.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipFile;

/** Makes zips byte by byte (APPNOTE 6.3), also such as no honest tool would make. */
final class Zips {
  /** An entry as it is to stand in the zip: what the headers say and what is really there. */
  private record Raw(String name, int method, long crc, long size, byte[] packed) {}

  private final List<Raw> entries = new ArrayList<>();

  /** The text of an entry. */
  static String text(Path zip, String name) throws IOException {
    try (ZipFile file = new ZipFile(zip.toFile())) {
      return new String(file.getInputStream(file.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The parts of a good mural file of the current version, with the given XMI. */
  static Zips mural(String xmi) {
    return new Zips().add("manifest.json", manifest(SchemaVersion.CURRENT)).add("mural.xmi", xmi);
  }

  static String manifest(int version) {
    return "{\"format\": \"muralbench-mural\", \"schemaVersion\": " + version + ", \"program\": \"9.8.7\"}";
  }

  Zips add(String name, String text) {
    return add(name, text.getBytes(StandardCharsets.UTF_8));
  }

  Zips add(String name, byte[] content) {
    CRC32 crc = new CRC32();
    crc.update(content);
    entries.add(new Raw(name, 0, crc.getValue(), content.length, content));
    return this;
  }

  /** An entry of {@code megabytes} MB of zeros whose headers say {@code claimed} bytes. */
  Zips addZeros(String name, int megabytes, long claimed) {
    Deflater deflater = new Deflater(9, true);
    deflater.setInput(new byte[1 << 20]);
    byte[] buffer = new byte[1 << 16];
    int length = deflater.deflate(buffer, 0, buffer.length, Deflater.FULL_FLUSH);
    deflater.end();
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    for (int i = 0; i < megabytes; i++) {
      // After a full flush nothing refers back, so the block may be repeated.
      packed.write(buffer, 0, length);
    }
    packed.write(3);
    packed.write(0);
    entries.add(new Raw(name, 8, 0, claimed, packed.toByteArray()));
    return this;
  }

  Path write(Path file) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream directory = new ByteArrayOutputStream();
    for (Raw entry : entries) {
      int offset = out.size();
      out.write(header(entry, 0x04034b50, offset));
      out.write(entry.packed());
      directory.write(header(entry, 0x02014b50, offset));
    }
    int start = out.size();
    directory.writeTo(out);
    out.write(ByteBuffer.allocate(22).order(ByteOrder.LITTLE_ENDIAN).putInt(0x06054b50).putInt(0)
        .putShort((short) entries.size()).putShort((short) entries.size()).putInt(directory.size()).putInt(start)
        .putShort((short) 0).array());
    return Files.write(file, out.toByteArray());
  }

  private static byte[] header(Raw entry, int signature, int offset) {
    boolean central = signature == 0x02014b50;
    byte[] name = entry.name().getBytes(StandardCharsets.UTF_8);
    ByteBuffer header = ByteBuffer.allocate((central ? 46 : 30) + name.length).order(ByteOrder.LITTLE_ENDIAN);
    header.putInt(signature);
    if (central) {
      header.putShort((short) 20);
    }
    header.putShort((short) 20).putShort((short) 0x800).putShort((short) entry.method()).putInt(0x21);
    header.putInt((int) entry.crc()).putInt(entry.packed().length).putInt((int) entry.size());
    header.putShort((short) name.length).putShort((short) 0);
    if (central) {
      header.putShort((short) 0).putShort((short) 0).putShort((short) 0).putInt(0).putInt(offset);
    }
    return header.put(name).array();
  }
}
