package dev.faircarry.faults;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * One connection to the service. It sends whatever bytes it is given, HTTP or not, which no
 * ordinary client would do.
 */
final class Wire implements AutoCloseable {
  /** No answer within this time is an answer that never comes. */
  static final int PATIENCE_MILLIS = 120_000;

  private final Socket socket;
  private InputStream in;
  private final OutputStream out;
  private Optional<String> early = Optional.empty();

  private Wire(Socket socket) throws IOException {
    this.socket = socket;
    this.in = new BufferedInputStream(socket.getInputStream());
    this.out = socket.getOutputStream();
  }

  /** A connection from the usual address of this machine. */
  static Wire to(int port) throws IOException {
    return from("127.0.0.1", port);
  }

  /**
   * A connection from one of the machine's own addresses, 127.x.y.z: requests are counted by
   * address.
   */
  static Wire from(String address, int port) throws IOException {
    Socket socket = new Socket();
    try {
      socket.setSoTimeout(PATIENCE_MILLIS);
      socket.setTcpNoDelay(true);
      socket.bind(new InetSocketAddress(own(address), 0));
      socket.connect(new InetSocketAddress(own("127.0.0.1"), port), PATIENCE_MILLIS);
      return new Wire(socket);
    } catch (IOException e) {
      socket.close();
      throw e;
    }
  }

  private static InetAddress own(String address) throws IOException {
    String[] parts = address.split("\\.", -1);
    byte[] bytes = new byte[parts.length];
    for (int i = 0; i < parts.length; i++) {
      bytes[i] = (byte) Integer.parseInt(parts[i]);
    }
    return InetAddress.getByAddress(bytes);
  }

  /**
   * An answer.
   *
   * @param headers names in lower case; of a name that stands twice the last
   */
  record Answer(int status, Map<String, String> headers, byte[] body) {
    String text() {
      return new String(body, StandardCharsets.UTF_8);
    }

    String header(String name) {
      return headers.getOrDefault(name, "");
    }

    /** The media type without parameters. */
    String kind() {
      return header("content-type").split(";", 2)[0].strip();
    }

    /** Whether nothing more will come on the connection. */
    boolean last() {
      return header("connection").toLowerCase(Locale.ROOT).contains("close");
    }
  }

  Wire send(byte[] bytes) throws IOException {
    out.write(bytes);
    out.flush();
    return this;
  }

  Wire send(String text) throws IOException {
    return send(text.getBytes(StandardCharsets.ISO_8859_1));
  }

  /** Says that nothing more will be sent, and goes on listening. */
  Wire endSending() throws IOException {
    socket.shutdownOutput();
    return this;
  }

  /**
   * Sends and takes in an answer of which only the status and the length are looked at, so that
   * measuring costs little beside what is measured.
   */
  int quickly(byte[] request, byte[] buffer) throws IOException {
    out.write(request);
    int has = 0;
    int end = -1;
    while (end < 0) {
      int read = socket.getInputStream().read(buffer, has, buffer.length - has);
      if (read < 0) {
        throw new EOFException("the answer ends early");
      }
      has += read;
      end = new String(buffer, 0, has, StandardCharsets.ISO_8859_1).indexOf("\r\n\r\n");
    }
    String head = new String(buffer, 0, end + 2, StandardCharsets.ISO_8859_1);
    int length = head.indexOf("Content-Length: ") + "Content-Length: ".length();
    int whole = end + 4 + Integer.parseInt(head.substring(length, head.indexOf('\r', length)));
    while (has < whole) {
      has += socket.getInputStream().read(buffer, has, buffer.length - has);
    }
    return Integer.parseInt(head.substring(9, 12));
  }

  /** What was told before the answer that was read last, if it was told twice. */
  Optional<String> early() {
    return early;
  }

  /** The answer to a request that is not HEAD. */
  Answer read() throws IOException {
    return read(false);
  }

  /**
   * The next answer; those that only say that there will be one are passed over.
   *
   * @throws EOFException if the connection ends first
   */
  Answer read(boolean head) throws IOException {
    early = Optional.empty();
    while (true) {
      String first = line();
      String[] words = first.split(" ", 3);
      if (!first.startsWith("HTTP/1.") || words.length < 2) {
        throw new IOException("not an answer: " + first);
      }
      int status = Integer.parseInt(words[1]);
      Map<String, String> headers = headers();
      if (status >= 200) {
        byte[] body = head || status == 204 || status == 304 ? new byte[0] : body(headers);
        if (new String(body, StandardCharsets.ISO_8859_1).startsWith("HTTP/1.")) {
          // Seldom, a connection that is refused early and closed is told so twice, the first time
          // without a body; why is not known. What is told last is held against the contract.
          early = Optional.of(first + " " + headers);
          in = new ByteArrayInputStream(body);
          continue;
        }
        return new Answer(status, Map.copyOf(headers), body);
      }
    }
  }

  private Map<String, String> headers() throws IOException {
    Map<String, String> headers = new LinkedHashMap<>();
    for (String line = line(); !line.isEmpty(); line = line()) {
      int colon = line.indexOf(':');
      headers.put(
          line.substring(0, colon).toLowerCase(Locale.ROOT), line.substring(colon + 1).strip());
    }
    return headers;
  }

  private byte[] body(Map<String, String> headers) throws IOException {
    String length = headers.get("content-length");
    if (length != null) {
      return exactly(Integer.parseInt(length));
    }
    if (headers.getOrDefault("content-type", "").startsWith("text/event-stream")) {
      return new byte[0];
    }
    if ("chunked".equals(headers.get("transfer-encoding"))) {
      ByteArrayOutputStream all = new ByteArrayOutputStream();
      int size = Integer.parseInt(line(), 16);
      while (size > 0) {
        all.writeBytes(exactly(size));
        line();
        size = Integer.parseInt(line(), 16);
      }
      line();
      return all.toByteArray();
    }
    return in.readAllBytes();
  }

  private byte[] exactly(int length) throws IOException {
    byte[] bytes = in.readNBytes(length);
    if (bytes.length < length) {
      throw new EOFException("the body ends early");
    }
    return bytes;
  }

  private String line() throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    while (true) {
      int next = in.read();
      if (next < 0) {
        throw new EOFException(
            "the connection ends after: " + line.toString(StandardCharsets.ISO_8859_1));
      }
      if (next == '\n') {
        return line.toString(StandardCharsets.ISO_8859_1).stripTrailing();
      }
      line.write(next);
    }
  }

  @Override
  public void close() {
    try {
      socket.close();
    } catch (IOException e) {
      // Whatever it was, it is over.
    }
  }
}
