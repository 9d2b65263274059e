/** How the steel hangs together: what frames into what, and what that makes of each member. */
package org.coatrun.shared.frame;
