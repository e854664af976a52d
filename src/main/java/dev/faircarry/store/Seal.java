package dev.faircarry.store;

import com.google.crypto.tink.Aead;
import com.google.crypto.tink.Configuration;
import com.google.crypto.tink.InsecureSecretKeyAccess;
import com.google.crypto.tink.KeysetHandle;
import com.google.crypto.tink.TinkJsonProtoKeysetFormat;
import com.google.crypto.tink.aead.AeadConfig2026;
import com.google.crypto.tink.aead.PredefinedAeadParameters;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;

/**
 * Encrypts what is kept about people: whole documents, and body masses with them. AES-256-GCM with
 * the place of the text as associated data, so that a text moved to another row does not open.
 */
public final class Seal {
  private static final Configuration AEAD = AeadConfig2026.get();

  private final Aead aead;

  private Seal(KeysetHandle keys) throws GeneralSecurityException {
    this.aead = keys.getPrimitive(AEAD, Aead.class);
  }

  /**
   * Takes the keys from their text, a Tink keyset in JSON.
   *
   * @throws IllegalArgumentException if it is none
   */
  public static Seal ofKeyset(String json) {
    try {
      return new Seal(
          TinkJsonProtoKeysetFormat.parseKeyset(json, AEAD, InsecureSecretKeyAccess.get()));
    } catch (GeneralSecurityException e) {
      // The cause may quote the keys.
      throw new IllegalArgumentException("the key is not a Tink AEAD keyset in JSON");
    }
  }

  /** A new keyset with one AES-256-GCM key. */
  public static String newKeyset() {
    try {
      return TinkJsonProtoKeysetFormat.serializeKeyset(
          KeysetHandle.generateNew(PredefinedAeadParameters.AES256_GCM, AEAD),
          AEAD,
          InsecureSecretKeyAccess.get());
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("this Java platform has no AES-GCM", e);
    }
  }

  /**
   * Takes the keys from a file, which is made, readable by its owner only, if it is not there.
   * Whoever loses the file loses the trips.
   */
  public static Seal ofFile(Path file) throws IOException {
    try {
      // Made whole beside it and then linked: another instance that starts now never sees half.
      Path made = Files.createTempFile(directory(file), ".key", ".new", ownerOnly());
      try {
        if (!Files.exists(file)) {
          Files.writeString(made, newKeyset() + "\n", StandardOpenOption.DSYNC);
          Files.createLink(file, made);
        }
      } finally {
        Files.delete(made);
      }
    } catch (FileAlreadyExistsException e) {
      // Another instance was faster; its keys hold.
    }
    return ofKeyset(Files.readString(file, StandardCharsets.UTF_8).strip());
  }

  private static Path directory(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    if (parent == null) {
      throw new IllegalArgumentException("a key file stands in a directory");
    }
    return parent;
  }

  private static FileAttribute<?> ownerOnly() {
    return PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"));
  }

  byte[] close(byte[] open, String place) {
    try {
      return aead.encrypt(open, place.getBytes(StandardCharsets.UTF_8));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("encryption failed", e);
    }
  }

  byte[] open(byte[] closed, String place) {
    try {
      return aead.decrypt(closed, place.getBytes(StandardCharsets.UTF_8));
    } catch (GeneralSecurityException e) {
      throw new WrongKey();
    }
  }

  /** What is kept was encrypted with another key, or has been tampered with. */
  public static final class WrongKey extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WrongKey() {
      super("what is kept does not open with this key");
    }
  }
}
