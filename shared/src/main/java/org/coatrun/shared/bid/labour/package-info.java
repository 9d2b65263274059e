/** Labour: crew hours by kind, height and access, with set-up and patching. */
package org.coatrun.shared.bid.labour;
