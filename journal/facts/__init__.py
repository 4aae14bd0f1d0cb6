"""What the trade publishes about grass, weed products and care: frozen figures, each with how it is known."""
