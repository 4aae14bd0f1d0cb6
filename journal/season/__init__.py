"""The record through time: indexed history, history as seen from one zone on one day, growth, weather sums."""
