/** Audition sheets: reading, planning and printing them. */
package fingering.cli.audition;
