"""Parts that pages share: the frame, notes with their sources, the job card."""
