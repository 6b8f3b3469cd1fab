#pragma once

namespace warmbench::ui {

class BenchMap;

/// Lets assistive programs see a bench map as a group of zones, each a group of the batches in it, all with
/// their sentences. Calling it again does nothing.
void installBenchMapAccess();
/// Tells them that another zone or batch has been chosen.
void tellAccessibility(BenchMap& map);

} // namespace warmbench::ui
