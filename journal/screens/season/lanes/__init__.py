"""One file a lane, each with its `LANE`. A new file here is a new row of the grid."""
