/** Inspection: what is drawn and read on each floor, field sheets, and how readings are judged. */
package org.coatrun.shared.bid.inspection;
