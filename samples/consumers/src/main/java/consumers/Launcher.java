package consumers;

import java.io.File;
import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Starts them as executable jars with jars inside do: by a class loader of its own, which the
 * threads of parallel streams do not know.
 */
public final class Launcher {
  private Launcher() {}

  /**
   * @param args the folder to write to
   */
  public static void main(String[] args) throws Exception {
    String path = System.getProperty("consumers.path");
    try (URLClassLoader loader = loader(path.split(File.pathSeparator))) {
      Thread.currentThread().setContextClassLoader(loader);
      loader
          .loadClass("consumers.Consumers")
          .getMethod("main", String[].class)
          .invoke(null, (Object) args);
    }
  }

  private static URLClassLoader loader(String... path) throws IOException {
    List<URL> urls = new ArrayList<>();
    for (String part : path) {
      urls.add(Path.of(part).toUri().toURL());
    }
    return new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
  }
}
