package fingering.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The ending of the file after --output decides its form, in every command. */
class FileFormsTest {
  private static final Path HEARING = Session.DEMO.resolveSibling("hearing.yaml");

  @TempDir Path folder;

  private Object[] words(String typed, String name) {
    List<Object> words = new ArrayList<>();
    for (String word : typed.split(" ", -1)) {
      words.add(
          switch (word) {
            case "DEMO" -> Session.DEMO;
            case "HEARING" -> HEARING;
            case "LANTERNS" -> CheckCommandTest.LANTERNS;
            default -> word;
          });
    }
    words.add("--output");
    words.add(folder.resolve(name));
    return words.toArray();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          plan DEMO                                                 | a.txt        | Lanterns
          plan DEMO                                                 | a.json       | {
          plan DEMO                                                 | a.svg        | <svg
          compare DEMO                                              | a.HTML       | <!DOCTYPE html>
          compare DEMO                                              | a.htm        | <!DOCTYPE html>
          compare DEMO                                              | plans        | Lanterns
          compare DEMO                                              | plans.old    | Lanterns
          compare DEMO --format json                                | plans.old    | {
          scale D major --instrument viola                          | a.html       | <!DOCTYPE html>
          chart viola --position 3                                  | a.svg        | <svg
          marks DEMO                                                | a.txt        | Lanterns
          marks DEMO                                                | a.html       | <!DOCTYPE html>
          handout DEMO                                              | a.html       | <!DOCTYPE html>
          handout DEMO                                              | sheet        | <!DOCTYPE html>
          audition HEARING                                          | a.json       | {
          audition HEARING                                          | a.html       | <!DOCTYPE html>
          check LANTERNS --fail-on unplayable --part Viola          | a.txt        | Lanterns
          check LANTERNS --fail-on unplayable --part Viola          | a.html       | <!DOCTYPE html>
          check LANTERNS --fail-on unplayable --part Viola          | a.sarif      | {
          check LANTERNS --fail-on unplayable --part Viola          | a.sarif.json | {
          check --print-level beginner                              | a.yaml       | #
          practice DEMO --from 60 --to 96 --by 2026-12-12 --today 2026-12-04 | a.html | <!DOCTYPE html>
          """)
  void endingDecidesTheForm(String typed, String name, String start) throws Exception {
    Session.of(words(typed, name)).succeeded();
    assertThat(Files.readString(folder.resolve(name))).startsWith(start);
  }

  @Test
  void sarifIsWrittenForBothOfItsEndings() {
    for (String name : List.of("f.sarif", "f.sarif.json")) {
      Session.of(words("check LANTERNS", name));
      assertThat(folder.resolve(name)).content().contains("\"2.1.0\"");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          marks DEMO              | a.json     | 'marks' makes text and html, not json; end the name in .txt or .html
          handout DEMO            | a.pdf      | 'handout' makes html, not pdf; end the name in .html
          audition HEARING        | a.svg      | 'audition' makes text, json and html, not svg; end the name in .txt, .json or .html
          chart viola             | a.html     | 'chart' makes text and svg, not html
          check LANTERNS          | a.svg      | 'check' makes text, json, sarif and html, not svg
          check --print-level beginner | a.json | 'check' makes yaml and text, not json
          compare DEMO            | a.sarif    | 'compare' makes text, json, html and svg, not sarif
          plan DEMO               | a.musicxml | not a score; use --write for that, or end the name in .txt
          compare DEMO            | a.mxl      | not a score; end the name in .txt
          plan DEMO               | a.pdf      | not pdf
          learn DEMO              | a.json     | 'learn' makes yaml and text, not json
          journal show            | a.html     | 'journal show' makes text and svg, not html
          practice DEMO --from 60 --to 96 --by 2026-12-12 | a.ics | not a calendar; use --calendar for that
          plan DEMO --format json | a.html     | --format json does not fit the name
          plan DEMO --format text | a.html     | end it in .txt, or leave out --format
          check LANTERNS --format sarif | a.json | end it in .sarif, or leave out --format
          """)
  void formThatTheCommandDoesNotMakeIsRefused(String typed, String name, String message) {
    Session refused = Session.of(words(typed, name)).refused(2);
    assertThat(refused.err()).contains(message);
    assertThat(refused.err().lines()).hasSize(1);
    assertThat(folder.resolve(name)).doesNotExist();
  }

  @Test
  void helpOffersOnlyFormsThatTheCommandMakes() {
    assertThat(Session.of("audition", "--help").succeeded().out())
        .contains("html (a page with the music)")
        .doesNotContain("svg");
    assertThat(Session.of("marks", "--help").succeeded().out())
        .contains("text or html (a page to print)");
  }
}
