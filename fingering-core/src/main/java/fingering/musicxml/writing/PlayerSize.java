package fingering.musicxml.writing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * Brings the small staves of a score to the size that players read from: 7 mm high (common
 * practice, no source). The page and its headings keep their size on paper, so their measures,
 * which are counted in parts of the staff, change.
 */
final class PlayerSize {
  private static final BigDecimal PLAYER = new BigDecimal("7");

  /** Staves of this many millimetres are fit for players already. */
  private static final BigDecimal READABLE = new BigDecimal("6.5");

  private static final BigDecimal STAFF = new BigDecimal("40");

  /** A longer number is damage. */
  private static final int MOST_DIGITS = 12;

  private final Cutter cutter;
  private final BigDecimal factor;

  private PlayerSize(Cutter cutter, BigDecimal factor) {
    this.cutter = cutter;
    this.factor = factor;
  }

  /**
   * Changes the size.
   *
   * @param header the defaults and credits of the score
   */
  static void apply(List<XmlNode> header, Cutter cutter) {
    for (XmlNode defaults : header) {
      if (defaults.is("defaults")) {
        defaults.first("scaling").ifPresent(scaling -> apply(scaling, defaults, header, cutter));
      }
    }
  }

  private static void apply(
      XmlNode scaling, XmlNode defaults, List<XmlNode> header, Cutter cutter) {
    String millimeters = scaling.textOf("millimeters");
    String tenths = scaling.textOf("tenths");
    if (!isNumber(millimeters) || !isNumber(tenths)) {
      return;
    }
    BigDecimal perTenth =
        new BigDecimal(millimeters).divide(new BigDecimal(tenths), MathContext.DECIMAL64);
    BigDecimal staff = perTenth.multiply(STAFF);
    if (staff.compareTo(READABLE) >= 0 || staff.compareTo(BigDecimal.ONE) < 0) {
      return;
    }
    PlayerSize size = new PlayerSize(cutter, staff.divide(PLAYER, MathContext.DECIMAL64));
    BigDecimal larger = new BigDecimal(millimeters).divide(size.factor, MathContext.DECIMAL64);
    cutter.text(scaling.first("millimeters").orElseThrow(), plain(larger));
    defaults.first("page-layout").ifPresent(size::page);
    header.stream().filter(node -> node.is("credit")).forEach(size::credit);
  }

  private static boolean isNumber(String text) {
    return text.length() <= MOST_DIGITS
        && text.matches("-?[0-9]+(\\.[0-9]+)?")
        && new BigDecimal(text).signum() != 0;
  }

  private static String plain(BigDecimal number) {
    return number.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
  }

  private void page(XmlNode node) {
    if (node.children().isEmpty() && isNumber(node.text())) {
      cutter.text(node, scaled(node.text()));
    }
    node.children().forEach(this::page);
  }

  private void credit(XmlNode credit) {
    for (XmlNode child : credit.children()) {
      for (String name : List.of("default-x", "default-y")) {
        String value = child.attribute(name);
        if (isNumber(value)) {
          cutter.attribute(child, name, scaled(value));
        }
      }
    }
  }

  private String scaled(String number) {
    return plain(new BigDecimal(number).multiply(factor));
  }
}
