#pragma once

#include "core/quantity/result.h"

#include <string>

namespace warmbench::app {

/// Opens the window on a book and stays until it is closed. With an empty name it shows the book that was
/// open last, or the start page. Refused where there is no display, or where the named book cannot be opened.
[[nodiscard]] Outcome runWindow(const std::string& book);

} // namespace warmbench::app
