package dev.faircarry.http;

import dev.faircarry.app.ServiceLimits;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.Callback;

/**
 * Gathers an answer and sends it when the thread of the request is done with it, so that a client
 * who reads slowly holds no thread. Events go out as they come.
 */
final class WholeAnswers extends Handler.Wrapper {
  private static final int FIRST_BYTES = 2_048;

  WholeAnswers(Handler handler) {
    super(handler);
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    Gathered gathered = new Gathered(request, response, callback);
    return super.handle(request, gathered, gathered);
  }

  private static final class Gathered extends Response.Wrapper implements Callback {
    private final Callback sent;
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream(FIRST_BYTES);
    private boolean gathering;
    private boolean passing;

    Gathered(Request request, Response response, Callback sent) {
      super(request, response);
      this.sent = sent;
    }

    @Override
    public void write(boolean last, ByteBuffer content, Callback written) {
      if (!gathering && !passing) {
        gathering = !events();
        passing = !gathering;
      }
      int more = BufferUtil.length(content);
      if (passing || bytes.size() + more > ServiceLimits.GATHERED_BYTES) {
        pass(last, content, written);
        return;
      }
      if (more > 0) {
        byte[] part = BufferUtil.toArray(content);
        bytes.write(part, 0, part.length);
        BufferUtil.clear(content);
      }
      written.succeeded();
    }

    private boolean events() {
      String kind = getHeaders().get(HttpHeader.CONTENT_TYPE);
      return kind != null && kind.startsWith("text/event-stream");
    }

    /** Sends what is gathered, and everything that follows as it comes. */
    private void pass(boolean last, ByteBuffer content, Callback written) {
      gathering = false;
      passing = true;
      if (bytes.size() == 0) {
        super.write(last, content, written);
        return;
      }
      ByteBuffer first = ByteBuffer.wrap(bytes.toByteArray());
      bytes.reset();
      super.write(
          false, first, Callback.from(() -> super.write(last, content, written), written::failed));
    }

    @Override
    public boolean isCommitted() {
      return gathering || super.isCommitted();
    }

    @Override
    public void reset() {
      gathering = false;
      bytes.reset();
      super.reset();
    }

    @Override
    public void succeeded() {
      if (gathering) {
        super.write(true, ByteBuffer.wrap(bytes.toByteArray()), sent);
      } else {
        sent.succeeded();
      }
    }

    @Override
    public void failed(Throwable thrown) {
      sent.failed(thrown);
    }
  }
}
