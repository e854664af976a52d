package dev.faircarry.store;

import dev.faircarry.app.StoreTrouble;
import java.util.Optional;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Where statements run: each piece of work in a transaction of its own, or all in one. */
interface Work {
  <T> T read(Function<Handle, T> work);

  <T> T write(Function<Handle, T> work);

  /** Whether the statements are PostgreSQL's; otherwise SQLite's. */
  boolean postgres();

  /** What was read since the last change, where that can be told at little cost. */
  Optional<Unchanged> unchanged();

  /**
   * A transaction for each.
   *
   * @param reading may be the same as {@code writing}
   * @param afresh has connections opened anew: one that was opened when nothing could be written
   *     stays so for as long as it is open
   */
  record Each(
      Jdbi reading, Jdbi writing, boolean postgres, Runnable afresh, Optional<Unchanged> unchanged)
      implements Work {
    @Override
    public <T> T read(Function<Handle, T> work) {
      return Troubles.told(() -> reading.withHandle(work::apply));
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
      try {
        return Troubles.told(() -> writing.inTransaction(work::apply));
      } catch (StoreTrouble e) {
        if (e.kind() == StoreTrouble.Kind.READ_ONLY) {
          afresh.run();
        }
        throw e;
      }
    }
  }

  /** One transaction for all, which somebody else began and will end. */
  record Together(Handle handle, boolean postgres) implements Work {
    @Override
    public Optional<Unchanged> unchanged() {
      return Optional.empty();
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
      return Troubles.told(() -> work.apply(handle));
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
      return Troubles.told(() -> work.apply(handle));
    }
  }
}
