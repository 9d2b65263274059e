package org.coatrun.shared.job;

import org.coatrun.shared.units.Share;
import org.coatrun.shared.yaml.Key;

/** How members are drawn for thickness readings. */
public record Inspection(
    @Key(
            note = "number that fixes which members are drawn; another number draws others",
            fallback = "1",
            least = "0",
            most = "1000000")
        int draw,
    @Key(
            note = "members to be read on each floor [IBC 1705.15]",
            fallback = "25 %",
            least = "1 %",
            most = "100 %")
        Share share) {}
