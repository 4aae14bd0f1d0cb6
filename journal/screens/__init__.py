"""What is shown. Pages are pure pictures of one standing; one canvas draws them; one line takes all typing."""
