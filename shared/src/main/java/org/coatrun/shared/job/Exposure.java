package org.coatrun.shared.job;

import org.coatrun.shared.units.Area;
import org.coatrun.shared.units.Length;
import org.coatrun.shared.units.Share;
import org.coatrun.shared.yaml.Key;

/** When a face counts as covered, and which holes count. */
public record Exposure(
    @Key(
            note = "faces closer than this are in contact [common practice]",
            fallback = "5 mm",
            least = "0 mm",
            most = "100 mm")
        Length contactGap,
    @Key(
            note = "holes smaller than this change nothing [common practice]",
            fallback = "15 in2",
            least = "0 in2",
            most = "10 ft2")
        Area holeThreshold,
    @Key(
            note = "coated length of attachments, in per cent of the area [common practice]",
            fallback = "0 %",
            least = "0 %",
            most = "50 %")
        Share attachmentAllowance) {}
