#pragma once

#include "ui/language/language.h"
#include "ui/shell/main_window.h"

#include <QObject>

namespace warmbench::app {

/// The program's window in the language that is kept as wanted. When another is chosen the window is made
/// anew in it, with the same book and all that can be taken back in it.
class OneWindow : public QObject {
    Q_OBJECT
public:
    /// `opener` must outlive it.
    OneWindow(ui::BookOpener& opener, Day today);

    [[nodiscard]] ui::MainWindow& window() { return *m_window; }

private:
    void make();
    void makeAnew();

    ui::BookOpener& m_opener;
    Day m_today;
    ui::Language m_language;
    std::unique_ptr<ui::MainWindow> m_window;
};

} // namespace warmbench::app
