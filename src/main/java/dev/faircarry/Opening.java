package dev.faircarry;

import dev.faircarry.app.CannotOpen;
import dev.faircarry.app.Store;
import dev.faircarry.app.StoreTrouble;
import dev.faircarry.config.Settings;
import dev.faircarry.store.Backup;
import dev.faircarry.store.Seal;
import dev.faircarry.store.Stores;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** Opens what the settings name, or says in one sentence why it cannot be opened. */
final class Opening {
  private Opening() {}

  static Seal seal(Settings settings) {
    Optional<String> keyset = settings.keyset();
    try {
      return keyset.isPresent() ? Seal.ofKeyset(keyset.get()) : Seal.ofFile(settings.keyFile());
    } catch (IllegalArgumentException e) {
      String where = keyset.isPresent() ? "The keyset" : "The file " + settings.keyFile();
      throw new CannotOpen("not-a-keyset", where + " is no Tink AEAD keyset in JSON.", e);
    } catch (IOException e) {
      throw new CannotOpen(
          "key-file", "The key file " + settings.keyFile() + " cannot be read or made.", e);
    }
  }

  static void copy(Settings settings, Path target) {
    Path database = settings.databaseFile();
    try {
      Backup.of(database, target);
    } catch (FileAlreadyExistsException e) {
      throw new CannotOpen("copy-exists", "There is a file " + target + " already.", e);
    } catch (NoSuchFileException e) {
      throw new CannotOpen("no-database", "There is no database " + database + ".", e);
    } catch (IOException e) {
      throw new CannotOpen("copy", "The copy " + target + " cannot be written.", e);
    } catch (StoreTrouble e) {
      throw new CannotOpen("database", "The database " + database + " cannot be copied.", e);
    }
  }

  static Store store(Settings settings, Seal seal) {
    Optional<String> url = settings.databaseUrl();
    try {
      return url.isPresent()
          ? Stores.postgres(url.get(), seal)
          : Stores.sqlite(settings.databaseFile(), seal);
    } catch (IllegalArgumentException e) {
      throw new CannotOpen("not-a-database", "The database address cannot be read.", e);
    } catch (Seal.WrongKey e) {
      throw new CannotOpen("wrong-keys", "What is kept there was kept with other keys.", e);
    } catch (IOException | StoreTrouble e) {
      throw new CannotOpen(
          "database",
          url.isPresent()
              ? "The PostgreSQL database does not answer, or refuses to be used."
              : "The database " + settings.databaseFile() + " cannot be opened or made.",
          e);
    }
  }
}
