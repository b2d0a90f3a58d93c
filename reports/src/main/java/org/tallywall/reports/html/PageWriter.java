package org.tallywall.reports.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import org.tallywall.reports.document.Document;
import org.tallywall.reports.markup.Element;
import org.tallywall.reports.markup.Markup;
import org.tallywall.reports.markup.MarkupNode;

/**
 * Writes a document as one page that needs nothing else: no network, no other file. Tables sort and
 * filter, charts stand in it as drawings, and it can be printed. Without scripts it is complete,
 * only less handy.
 *
 * <p>The page forbids the browser (by a content security policy with digests of its own style and
 * script) to load anything, and to run a script that a name might have brought in.
 */
public final class PageWriter {
  private PageWriter() {}

  /**
   * Writes a page.
   *
   * @param document what stands on it
   * @return the whole file, ended by {@code \n}
   */
  public static String text(Document document) {
    return text(document, Extras.NONE);
  }

  /**
   * Writes a page with styles and a script of the caller's own.
   *
   * @param document what stands on it
   * @param extras the caller's own
   * @return the whole file, ended by {@code \n}
   */
  public static String text(Document document, Extras extras) {
    String style = Resource.text(PageWriter.class, "page.css") + extras.style();
    String script = Resource.text(PageWriter.class, "page.js") + extras.script();
    Element html = Element.of("html").with("lang", "en");
    html.add(head(document.title(), style, script, extras.maker()));
    html.add(body(document, script));
    return "<!DOCTYPE html>\n" + Markup.html(html);
  }

  private static Element head(String title, String style, String script, String maker) {
    Element head = Element.of("head").add(Element.of("meta").with("charset", "utf-8"));
    if (!maker.isEmpty()) {
      head.add(meta("generator", maker));
    }
    head.add(meta("viewport", "width=device-width, initial-scale=1"));
    String policy =
        "default-src 'none'; img-src data:; base-uri 'none'; form-action 'none'; style-src "
            + (digest(style) + "; script-src " + digest(script));
    Element guard = Element.of("meta").with("http-equiv", "Content-Security-Policy");
    head.add(guard.with("content", policy));
    head.add(Element.of("link").with("rel", "icon").with("href", "data:,"));
    head.add(Element.of("title", title));
    return head.add(Element.of("style").add(new MarkupNode.Verbatim(style)));
  }

  private static Element meta(String name, String content) {
    return Element.of("meta").with("name", name).with("content", content);
  }

  private static Element body(Document document, String script) {
    PartWriter writer = new PartWriter(document);
    Element main = Element.of("main").with("id", "main").add(Element.of("h1", document.title()));
    main.addAll(writer.parts(document.parts()));
    main.addAll(writer.footnotes());
    Element skip = Element.of("a", "Skip to the text").with("class", "skip").with("href", "#main");
    Element body = Element.of("body").add(skip).add(main);
    return body.add(Element.of("script").add(new MarkupNode.Verbatim(script)));
  }

  /** A source expression with a digest (Content Security Policy Level 3, section 2.3.1). */
  private static String digest(String text) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      byte[] digest = sha.digest(text.getBytes(StandardCharsets.UTF_8));
      return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
    } catch (NoSuchAlgorithmException e) {
      throw new AssertionError("every Java runtime has SHA-256", e);
    }
  }
}
