package io.github.brinewright.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Makes an input out of a good one: cells, lines and bytes changed, moved, doubled or dropped. */
final class Mutator {
  private final Random random;

  Mutator(long seed) {
    random = new Random(seed);
  }

  byte[] mutate(byte[] seed) {
    byte[] bytes = seed;
    for (int i = random.nextInt(4); i >= 0; i--) {
      bytes =
          switch (random.nextInt(6)) {
            case 0 -> bits(bytes);
            case 1 -> cut(bytes);
            case 2 -> lines(bytes);
            default -> cells(bytes);
          };
    }
    return bytes;
  }

  /** Bytes of no form at all, for inputs that are decisions. */
  byte[] decisions() {
    byte[] bytes = new byte[8 + random.nextInt(120)];
    random.nextBytes(bytes);
    return bytes;
  }

  private byte[] bits(byte[] bytes) {
    byte[] changed = bytes.clone();
    for (int i = random.nextInt(8); i >= 0 && changed.length > 0; i--) {
      changed[random.nextInt(changed.length)] = (byte) random.nextInt(256);
    }
    return changed;
  }

  private byte[] cut(byte[] bytes) {
    int from = random.nextInt(bytes.length + 1);
    int to = Math.min(bytes.length, from + random.nextInt(64));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(bytes, 0, from);
    if (random.nextBoolean()) {
      out.write(bytes, from, to - from);
      out.write(bytes, from, to - from);
    }
    out.write(bytes, to, bytes.length - to);
    return out.toByteArray();
  }

  private byte[] lines(byte[] bytes) {
    List<String> lines = new ArrayList<>(List.of(text(bytes).split("\n", -1)));
    int line = random.nextInt(lines.size());
    switch (random.nextInt(3)) {
      case 0 -> lines.remove(line);
      case 1 -> lines.add(line, lines.get(random.nextInt(lines.size())));
      default -> lines.set(line, lines.get(line) + "," + nasty());
    }
    return bytes(String.join("\n", lines));
  }

  /** Changes what stands between commas, equals signs, colons, blanks and line ends. */
  private byte[] cells(byte[] bytes) {
    String[] cells = text(bytes).split("(?<=[,=:\\n\\s])|(?=[,=:\\n\\s])", -1);
    int cell = random.nextInt(cells.length);
    cells[cell] = random.nextInt(5) > 0 ? nasty() : cells[random.nextInt(cells.length)];
    return bytes(String.join("", Arrays.asList(cells)));
  }

  private String nasty() {
    return Nasty.TEXTS[random.nextInt(Nasty.TEXTS.length)];
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
