package org.tallywall.reports.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.tallywall.reports.Golden;
import org.tallywall.reports.SampleDocuments;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.document.Part;

class PageWriterTest {
  private static final Pattern SCRIPT = Pattern.compile("<script>(.*?)</script>", Pattern.DOTALL);
  private static final Pattern ID = Pattern.compile(" id=\"([^\"]+)\"");

  @Test
  void page_withEveryPart_isTheSameBytes() throws IOException {
    Golden.assertSame(PageWriter.text(SampleDocuments.everyPart()), "pages/every-part.html");
  }

  @Test
  void names_thatWouldDoHarm_standAsText() throws IOException {
    String page = PageWriter.text(SampleDocuments.awkward());
    Golden.assertSame(page, "pages/awkward.html");
    assertThat(page).doesNotContain("<script>document.title").doesNotContain("<img");
    assertThat(page).contains("&lt;script&gt;document.title = 'harmed'&lt;/script&gt;");
  }

  @Test
  void page_written_namesNoPlaceOutside() {
    String page = PageWriter.text(SampleDocuments.everyPart());
    assertThat(page.replace("http://www.w3.org/2000/svg", "")).doesNotContain("://");
  }

  /** The digest in the policy is that of the script, or the browser would refuse to run it. */
  @Test
  void policy_ofAPage_allowsItsOwnScriptAlone() throws Exception {
    Extras extras = new Extras("p { color: red; }", "window.own = 1;\n", "A maker of pages");
    String page = PageWriter.text(new Document("A page", List.of()), extras);
    Matcher script = SCRIPT.matcher(page);
    assertThat(script.find()).isTrue();
    byte[] code = script.group(1).getBytes(StandardCharsets.UTF_8);
    byte[] digest = MessageDigest.getInstance("SHA-256").digest(code);
    assertThat(script.group(1)).endsWith(extras.script());
    assertThat(page)
        .contains("script-src 'sha256-" + Base64.getEncoder().encodeToString(digest) + "'\"");
    assertThat(page).contains(extras.style()).contains("default-src 'none'");
    assertThat(page.substring(0, page.indexOf("<title>")))
        .contains("<meta name=\"generator\" content=\"A maker of pages\">");
  }

  @Test
  void identifiers_ofAPage_occurOnce() {
    Matcher ids = ID.matcher(PageWriter.text(SampleDocuments.everyPart()));
    assertThat(ids.results().map(id -> id.group(1)).toList()).isNotEmpty().doesNotHaveDuplicates();
  }

  @Test
  void contents_ofAPage_leadToItsSections() {
    Part inner = Part.Section.of("inner");
    Document document =
        new Document(
            "Pack",
            List.of(
                new Part.Contents(),
                Part.Section.of("first", inner, inner),
                Part.Section.of("second")));
    assertThat(PageWriter.text(document))
        .contains("<a href=\"#section-4\">second</a>")
        .contains("<section id=\"section-4\">\n<h2>second</h2>");
  }
}
