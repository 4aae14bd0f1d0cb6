"""The Season page's drawing: 53 cells of time, a lane for each kind of work, and the same in words beneath."""
