package fingering.musicxml.xml;

import com.google.common.base.Suppliers;
import com.google.common.base.Utf8;
import com.google.common.collect.ImmutableList;
import com.google.common.io.ByteSource;
import fingering.musicxml.UnreadableScoreException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CharsetEncoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnmappableCharacterException;
import java.nio.charset.UnsupportedCharsetException;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The encoding of an XML file.
 *
 * @param charset the character encoding, never one that writes a byte order mark by itself
 * @param marked whether the file begins with a byte order mark
 */
public record XmlEncoding(Charset charset, boolean marked) {

  /** An XML declaration always ends within this number of bytes. */
  private static final int DECLARATION_BYTES = 4096;

  private static final String DECLARATION = "<?xml";
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  // UTF-32 first: its little-endian byte order mark begins like that of UTF-16.
  private static final ImmutableList<String> UNICODE =
      ImmutableList.of("UTF-32BE", "UTF-32LE", "UTF-16BE", "UTF-16LE", "UTF-8");

  /** The part of a file that is decoded to find its root element. */
  private static final int HEAD_BYTES = 1 << 16;

  /**
   * The text of a file. UTF-8, the usual encoding, is decoded only when the text is requested,
   * because parsing does not need it.
   *
   * @param encoding the encoding of the file
   * @param utf8 the bytes without byte order mark if they are UTF-8
   * @param head the beginning of the text, or all of it
   * @param whole supplies the text, without byte order mark
   */
  public record Decoded(
      XmlEncoding encoding, Optional<ByteSource> utf8, String head, Supplier<String> whole) {
    /** Returns the whole text. */
    public String text() {
      return whole.get();
    }
  }

  /**
   * Determines the encoding of an XML file, from its byte order mark or else from its XML
   * declaration, and decodes it.
   *
   * @param bytes the whole file
   * @param what the name of the file in messages
   * @throws UnreadableScoreException if the file is empty or not XML, declares an unknown encoding,
   *     or is not valid in its declared encoding
   */
  public static Decoded decode(byte[] bytes, String what) {
    if (bytes.length == 0) {
      throw new UnreadableScoreException(
          "%s is empty: export the score again from your notation program.".formatted(what));
    }
    XmlEncoding encoding = detect(bytes, what);
    int mark = encoding.marked() ? encoding.byteOrderMark().length : 0;
    int length = bytes.length - mark;
    if (encoding.charset().equals(StandardCharsets.UTF_8)
        && Utf8.isWellFormed(bytes, mark, length)) {
      String head = new String(bytes, mark, Math.min(length, HEAD_BYTES), encoding.charset());
      requireXml(head, what);
      return new Decoded(
          encoding,
          Optional.of(ByteSource.wrap(bytes).slice(mark, length)),
          head,
          Suppliers.memoize(() -> new String(bytes, mark, length, StandardCharsets.UTF_8)));
    }
    String text = encoding.decode(ByteBuffer.wrap(bytes, mark, length), what);
    requireXml(text, what);
    return new Decoded(encoding, Optional.empty(), text, () -> text);
  }

  private static void requireXml(String text, String what) {
    int first = 0;
    while (first < text.length() && XmlText.isSpace(text.charAt(first))) {
      first++;
    }
    if (first == text.length() || text.charAt(first) != '<') {
      throw notXml(what);
    }
  }

  /**
   * Encodes text, with the byte order mark if there is one. A character that the encoding lacks
   * becomes a character reference, which XML allows in text and attribute values.
   *
   * @throws CharacterCodingException if the text contains an unpaired surrogate
   */
  public byte[] encode(String text) throws CharacterCodingException {
    ByteBuffer encoded;
    try {
      encoded = encoder().encode(CharBuffer.wrap(text));
    } catch (UnmappableCharacterException e) {
      encoded = encoder().encode(CharBuffer.wrap(withReferences(text)));
    }
    byte[] mark = marked ? byteOrderMark() : new byte[0];
    byte[] bytes = Arrays.copyOf(mark, mark.length + encoded.remaining());
    encoded.get(bytes, mark.length, encoded.remaining());
    return bytes;
  }

  private String withReferences(String text) {
    CharsetEncoder encoder = encoder();
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      String written = Character.toString(c);
      out.append(c < 0x80 || encoder.canEncode(written) ? written : "&#" + c + ";");
      i += written.length();
    }
    return out.toString();
  }

  private CharsetEncoder encoder() {
    return charset
        .newEncoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT);
  }

  private byte[] byteOrderMark() {
    return Character.toString(BYTE_ORDER_MARK).getBytes(charset);
  }

  private static XmlEncoding detect(byte[] bytes, String what) {
    for (String name : UNICODE) {
      XmlEncoding encoding = new XmlEncoding(Charset.forName(name), true);
      if (startsWith(bytes, encoding.byteOrderMark())) {
        return encoding;
      }
    }
    for (String name : UNICODE.subList(0, 4)) {
      Charset charset = Charset.forName(name);
      if (startsWith(bytes, "<".getBytes(charset))) {
        return new XmlEncoding(charset, false);
      }
    }
    return new XmlEncoding(declared(bytes, what).orElse(StandardCharsets.UTF_8), false);
  }

  private static boolean startsWith(byte[] bytes, byte[] start) {
    return bytes.length >= start.length
        && Arrays.equals(bytes, 0, start.length, start, 0, start.length);
  }

  private static Optional<Charset> declared(byte[] bytes, String what) {
    int length = Math.min(bytes.length, DECLARATION_BYTES);
    Optional<String> name = encodingName(new String(bytes, 0, length, StandardCharsets.ISO_8859_1));
    if (name.isEmpty()) {
      return Optional.empty();
    }
    try {
      Charset charset = Charset.forName(name.get());
      String start = new String(bytes, 0, DECLARATION.length(), charset);
      if (!charset.canEncode() || !start.equals(DECLARATION)) {
        throw new UnreadableScoreException(
            "%s declares the encoding %s in its first line but does not use it: export the score again as UTF-8 from your notation program."
                .formatted(what, XmlText.printable(name.get())));
      }
      return Optional.of(charset);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
      throw new UnreadableScoreException(
          "%s declares an unknown character encoding, '%s', in its first line: export the score again as UTF-8 from your notation program."
              .formatted(what, XmlText.printable(name.get())),
          e);
    }
  }

  /** Returns the encoding in the XML declaration at the start of the text. */
  private static Optional<String> encodingName(String start) {
    int end = start.indexOf("?>");
    if (!start.startsWith(DECLARATION) || end < 0) {
      return Optional.empty();
    }
    String declaration = start.substring(DECLARATION.length(), end);
    int key = declaration.indexOf("encoding");
    if (key < 0) {
      return Optional.empty();
    }
    String value = declaration.substring(key + "encoding".length()).strip();
    if (!value.startsWith("=")) {
      return Optional.empty();
    }
    value = value.substring(1).strip();
    if (value.isEmpty() || (value.charAt(0) != '"' && value.charAt(0) != '\'')) {
      return Optional.empty();
    }
    int close = value.indexOf(value.charAt(0), 1);
    return close < 0 ? Optional.empty() : Optional.of(value.substring(1, close));
  }

  private String decode(ByteBuffer bytes, String what) {
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    int most = (int) Math.ceil(bytes.remaining() * (double) decoder.maxCharsPerByte()) + 1;
    CharBuffer chars = CharBuffer.allocate(most);
    CoderResult result = decoder.decode(bytes, chars, true);
    if (!result.isError()) {
      result = decoder.flush(chars);
    }
    chars.flip();
    if (result.isError()) {
      throw wronglyEncoded(chars, what);
    }
    return chars.toString();
  }

  private UnreadableScoreException wronglyEncoded(CharBuffer soFar, String what) {
    int first = 0;
    while (first < soFar.length() && XmlText.isSpace(soFar.charAt(first))) {
      first++;
    }
    if (first == soFar.length() || soFar.charAt(first) != '<') {
      return notXml(what);
    }
    long line = 1 + soFar.chars().filter(c -> c == '\n').count();
    return new UnreadableScoreException(
        "%s is not valid %s at line %d: export the score again as UTF-8 from your notation program."
            .formatted(what, charset.name(), line));
  }

  private static UnreadableScoreException notXml(String what) {
    return new UnreadableScoreException(
        "%s is not MusicXML: export the score as MusicXML (.musicxml or .mxl) from your notation program and use that file."
            .formatted(what));
  }
}
