package dev.faircarry.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.faircarry.check.IssueCode;

/** Writes the list of issue codes. */
public final class IssueCodeWriter {
  private IssueCodeWriter() {}

  public static byte[] write() {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    ArrayNode codes = out.putArray("issueCodes");
    for (IssueCode code : IssueCode.values()) {
      ObjectNode one = codes.addObject();
      one.put("code", code.text());
      one.put("meaning", code.meaning());
      one.put("remedy", code.remedy());
      one.put("sample", IssueSamples.shown(code));
    }
    return JsonBytes.of(out);
  }
}
