package dev.faircarry.http;

import dev.faircarry.json.ProblemWriter;
import java.nio.ByteBuffer;
import java.util.List;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/**
 * Answers what never becomes a request of ours: broken addresses, headers that are too long, HTTP
 * that is none. The body is a problem like any other; it has no id because nothing was begun.
 */
final class RefusedEarly extends ErrorHandler {
  private static final String NO_REQUEST = "none";

  /** A version or a transfer that nobody knows is the client's fault, not the service's. */
  private static int status(int jetty) {
    return switch (jetty) {
      case HttpStatus.NOT_IMPLEMENTED_501, HttpStatus.HTTP_VERSION_NOT_SUPPORTED_505 ->
          HttpStatus.BAD_REQUEST_400;
      default -> Math.max(HttpStatus.BAD_REQUEST_400, jetty);
    };
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) {
    int status = status(response.getStatus());
    ProblemCode code = status < 500 ? ProblemCode.BAD_REQUEST : ProblemCode.INTERNAL;
    response.setStatus(status);
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problems.MEDIA_TYPE);
    response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
    // Where the request ends is not known, so the connection cannot be used again; it is said.
    response.getHeaders().put(HttpHeader.CONNECTION, "close");
    SecurityHeaders.ALWAYS.forEach((name, value) -> response.getHeaders().put(name, value));
    byte[] body =
        ProblemWriter.write(
            new ProblemWriter.Problem(
                code.type(),
                code.text(),
                code.title(),
                status,
                status < 500
                    ? "The address or the headers cannot be read, or are too long."
                    : "The request could not be answered.",
                NO_REQUEST),
            List.of(),
            false);
    response.write(true, ByteBuffer.wrap(body), callback);
    return true;
  }
}
