package org.tallywall.strategies.jar;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLConnection;
import java.net.URLStreamHandler;
import java.util.Collections;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tallywall.strategies.catalog.WrongPlayerException;

/**
 * Loads classes of a jar from memory. So what plays is what was digested, even if the jar is built
 * again while a run goes on, and no file stays open. A class that would end the program is refused.
 *
 * <p>Left out: other jars named in the manifest, classes for certain versions of Java under {@code
 * META-INF/versions}, and signatures.
 */
final class JarLoader extends ClassLoader {
  private static final String PROTOCOL = "tallywall-jar";
  private static final String CLASS = ".class";

  private final Map<String, byte[]> files;

  JarLoader(Map<String, byte[]> files) {
    super("players", JarLoader.class.getClassLoader());
    this.files = files;
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    byte[] bytes = files.get(name.replace('.', '/') + CLASS);
    if (bytes == null) {
      throw new ClassNotFoundException(name);
    }
    Optional<String> ending = EndingCalls.in(bytes);
    if (ending.isPresent()) {
      throw new WrongPlayerException(
          "the class \""
              + name
              + "\" calls "
              + ending.get()
              + ", which would end the whole program; take that call out");
    }
    return defineClass(name, bytes, 0, bytes.length);
  }

  @Override
  protected URL findResource(String name) {
    byte[] bytes = files.get(name);
    return bytes == null ? null : url(name, bytes);
  }

  @Override
  protected Enumeration<URL> findResources(String name) {
    URL url = findResource(name);
    return Collections.enumeration(url == null ? List.of() : List.of(url));
  }

  private static URL url(String name, byte[] bytes) {
    try {
      return new URL(PROTOCOL, "", -1, "/" + name, new FromMemory(bytes));
    } catch (MalformedURLException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** Opens a file that lies in memory. */
  private static final class FromMemory extends URLStreamHandler {
    private final byte[] bytes;

    FromMemory(byte[] bytes) {
      this.bytes = bytes;
    }

    @Override
    protected URLConnection openConnection(URL url) {
      return new URLConnection(url) {
        @Override
        public void connect() throws IOException {
          connected = true;
        }

        @Override
        public InputStream getInputStream() {
          return new ByteArrayInputStream(bytes);
        }
      };
    }
  }
}
