package fingering.page.view;

import gg.jte.Content;
import gg.jte.TemplateOutput;
import gg.jte.html.HtmlContent;
import gg.jte.html.HtmlInterceptor;
import gg.jte.html.HtmlTemplateOutput;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import gg.jte.output.WriterOutput;
import java.io.Writer;
import java.util.Map;

/** Fills templates. Text is escaped by default; {@link Content} is HTML already. */
public final class Templates {
  /** The templates have no forms, so there is nothing to add to them. */
  public static final HtmlInterceptor PLAIN =
      new HtmlInterceptor() {
        @Override
        public void onHtmlTagOpened(
            String tag, Map<String, Object> attributes, TemplateOutput output) {}

        @Override
        public void onHtmlTagClosed(String tag, TemplateOutput output) {}
      };

  private Templates() {}

  /** Fills a template into a string. */
  public static String filled(HtmlContent template) {
    StringOutput output = new StringOutput();
    template.writeTo((HtmlTemplateOutput) new OwaspHtmlTemplateOutput(output));
    return output.toString();
  }

  /** Fills a template into a writer, part by part. */
  public static void write(HtmlContent template, Writer writer) {
    template.writeTo((HtmlTemplateOutput) new OwaspHtmlTemplateOutput(new WriterOutput(writer)));
  }

  /** Elements that are HTML or SVG already. */
  public static Content elements(String elements) {
    return output -> output.writeContent(elements);
  }
}
