#pragma once

#include "app/window/file_session.h"

namespace warmbench::app {

/// Opens house books for the window, and remembers the last one that it has opened or made.
class LastBookOpener : public FileOpener {
public:
    using FileOpener::FileOpener;
    Result<std::unique_ptr<ui::BookSession>> open(const QString& name) override;
};

/// The book that was opened or made last: a file's whole path, or a shared book's address without its
/// password. Empty where there was none.
[[nodiscard]] QString lastBook();

} // namespace warmbench::app
