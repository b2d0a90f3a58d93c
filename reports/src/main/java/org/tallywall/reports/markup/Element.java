package org.tallywall.reports.markup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * An element that grows: attributes in the order in which they were set, children in the order in
 * which they were added. Not safe for several threads at once.
 */
public final class Element implements MarkupNode {
  private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9:-]*");

  private final String name;
  private final Map<String, String> attributes = new LinkedHashMap<>();
  private final List<MarkupNode> children = new ArrayList<>();

  private Element(String name) {
    this.name = name;
  }

  /**
   * Starts an element.
   *
   * @param name its name: letters, digits, hyphens and colons
   * @return the element, without attributes and children
   * @throws IllegalArgumentException if the name has another form
   */
  public static Element of(String name) {
    return new Element(checked(name));
  }

  /**
   * Starts an element that holds text.
   *
   * @param name its name
   * @param text any text
   * @return the element
   * @throws IllegalArgumentException if the name has another form
   */
  public static Element of(String name, String text) {
    return of(name).text(text);
  }

  /**
   * Sets an attribute.
   *
   * @param attribute its name: letters, digits, hyphens and colons
   * @param value any text
   * @return this element
   * @throws IllegalArgumentException if the name has another form
   */
  public Element with(String attribute, String value) {
    attributes.put(checked(attribute), value);
    return this;
  }

  /**
   * Adds a child at the end.
   *
   * @param child an element or text
   * @return this element
   */
  public Element add(MarkupNode child) {
    children.add(child);
    return this;
  }

  /**
   * Adds children at the end.
   *
   * @param more elements or texts
   * @return this element
   */
  public Element addAll(Collection<? extends MarkupNode> more) {
    children.addAll(more);
    return this;
  }

  /**
   * Adds text at the end.
   *
   * @param text any text
   * @return this element
   */
  public Element text(String text) {
    return add(new Words(text));
  }

  /**
   * Tells the name.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Tells the attributes.
   *
   * @return values by name, in the order in which they were set; cannot be changed
   */
  public Map<String, String> attributes() {
    return Collections.unmodifiableMap(attributes);
  }

  /**
   * Tells the children.
   *
   * @return the children in their order; cannot be changed
   */
  public List<MarkupNode> children() {
    return Collections.unmodifiableList(children);
  }

  private static String checked(String name) {
    if (!NAME.matcher(name).matches()) {
      throw new IllegalArgumentException("not the name of an element or attribute: " + name);
    }
    return name;
  }
}
