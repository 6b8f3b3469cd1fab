#pragma once

namespace warmbench::ui {

class DayLine;

/// Lets assistive programs see a day line as a slider whose value is the day in words.
/// Calling it again does nothing.
void installDayLineAccess();
/// Tells them that the day has changed.
void tellAccessibility(DayLine& line);

} // namespace warmbench::ui
