"""The page that lies in every book, for whoever opens the folder without this program."""

NAME = "READ-ME.txt"

TEXT = """\
This folder is a lawn journal
=============================

It was written by the program Swardbook, and it can be read without it: the log is plain text.
Do not edit the files; copying, backing up and moving the whole folder is fine. This page is never read
by the program.

log/      The journal itself. Every file with ".jsonl" in its name counts, whatever else the name says.
          2026-desk-7f3a.jsonl holds what was written in 2026 on the computer "desk-7f3a".
          Only that computer adds to it, at its end; nothing in it is ever altered or taken out.
          A name with a further part (2026-desk-7f3a-91c0aa12.jsonl) is more of the same.
          A name that ends in ".part" is an import that was never finished; it does not count.
.lock-... Empty. Keeps two open windows from writing at the same moment.

Two copies of this journal that grew apart are merged by putting all the files of both "log" folders
into one. The same file twice, under two names, does no harm. A backup is restored in the same way.

One line of a log is one change, written as a JSON object in UTF-8, of at most one megabyte (1048576 bytes):

  {"v":1,"n":7,"at":"2026-05-03T14:22:31.123Z","by":"desk-7f3a","t":"entries","id":"01KQ...",
   "was":["desk-7f3a.5.1a2b3c4d"],"put":{"kind":"mowing",...},"crc":"9f3ab210"}

v       the format of the line: 1
n       1, 2, 3 ... for each computer, over all years; a number left out means that a line is missing
at      when it was written: UTC, to the millisecond. What was written in one act bears the same time
by      the computer
t       the kind of thing: "entries" for the journal
id      the entry, named once and for ever
was     the versions of the entry that this one replaces; left out for a new entry
put     the entry as it is from now on, whole; or instead
del     true: the entry is struck
undoes  the version that this one takes back; only if it was written by "undo" or "redo"
all     instead of t, id, was, put, del and undoes: a list of up to 200 such changes that belong together
crc     a checksum, CRC-32 as eight hexadecimal digits, of all the bytes of the line before ,"crc":

A version is named by, n and crc with dots between: desk-7f3a.7.9f3ab210. A change in a list of several has
its place in the list added: desk-7f3a.7.9f3ab210.1 is the first.

A line counts if it ends in its checksum and the checksum is right. A damaged line counts for nothing and
harms no other. To know an entry, take all its versions in all files, in any order, and leave out those that
another version of the entry replaced. What is left is the entry. If several are left, they were written on two
computers that did not know of each other: a "put" goes before a "del", and then the latest by at, by, n and crc;
the others stay in the log.
"""
