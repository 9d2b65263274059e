/** Drives a browser on this machine by its DevTools protocol, for tests of the page. */
package org.coatrun.cli.browser;
