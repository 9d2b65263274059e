package org.coatrun.shared.bid.amounts;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coatrun.shared.job.Job;
import org.coatrun.shared.yaml.Key;
import org.coatrun.shared.yaml.Words;

/**
 * Lists the values of a job, each with its source: stated in the job file, or the default with
 * where that comes from.
 */
public final class JobBasis {

  /** The source in a key's note: {@code [common practice]}. */
  private static final Pattern SOURCE = Pattern.compile("\\s*\\[([^\\]]+)\\]\\s*$");

  private static final String PLAIN_DEFAULT = "default";
  private static final String JOB_FILE = "job file";
  private static final String NOT_STATED = "not stated";

  private final List<BasisLine> lines = new ArrayList<>();

  private JobBasis() {}

  /**
   * The values of some groups, in the order of the job's keys.
   *
   * @param groups keys of the job, such as {@code material}, or of a part of one, such as {@code
   *     exposure.attachment-allowance}
   */
  public static List<BasisLine> of(Job job, List<String> groups) {
    JobBasis basis = new JobBasis();
    basis.walk(job, Job.defaults(), "");
    return basis.lines.stream()
        .filter(line -> groups.stream().anyMatch(g -> within(line.key(), g)))
        .toList();
  }

  private static boolean within(String key, String group) {
    return key.equals(group) || key.startsWith(group + ".");
  }

  private void walk(Object record, Object defaults, String path) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Key key = component.getAnnotation(Key.class);
      String at = path + Words.key(component.getName());
      Object value = value(component, record);
      Object standard = value(component, defaults);
      if (isGroup(value, key)) {
        walk(value, standard, at + ".");
      } else {
        lines.add(line(at, key, value, standard));
      }
    }
  }

  /** A group has keys of its own, and so no value to fall back to. */
  private static boolean isGroup(Object value, Key key) {
    return value instanceof Record
        && key.fallback().isEmpty()
        && Arrays.stream(value.getClass().getRecordComponents())
            .allMatch(c -> c.isAnnotationPresent(Key.class));
  }

  private static BasisLine line(String at, Key key, Object value, Object standard) {
    boolean stated = !Objects.equals(value, standard);
    Matcher source = SOURCE.matcher(key.note());
    boolean sourced = source.find();
    String note = sourced ? key.note().substring(0, source.start()) : key.note();
    String given = sourced ? source.group(1) : PLAIN_DEFAULT;
    String text = !stated && !key.fallback().isEmpty() ? key.fallback() : text(value, key);
    return new BasisLine(at, note, text, stated ? JOB_FILE : given, stated);
  }

  private static String text(Object value, Key key) {
    if (value instanceof Optional<?> optional && optional.isEmpty()) {
      return NOT_STATED;
    }
    return ValueText.of(value, key.unit());
  }

  private static Object value(RecordComponent component, Object record) {
    try {
      return component.getAccessor().invoke(record);
    } catch (InvocationTargetException | IllegalAccessException e) {
      throw new IllegalStateException("cannot read " + component.getName(), e);
    }
  }
}
