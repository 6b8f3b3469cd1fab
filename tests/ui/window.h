#pragma once

#include "tests/support/small_nursery.h"
#include "ui/shell/main_window.h"
#include "ui/shell/memory_session.h"

#include <QStandardPaths>

namespace warmbench::tests {

/// Opens the small nursery, whatever is asked for; refuses the name `none`.
class SmallNurseryOpener : public ui::BookOpener {
public:
    Result<std::unique_ptr<ui::BookSession>> open(const QString& name) override {
        if (name == QLatin1String("none")) return Refusal{"none", "there is no such book"};
        return std::unique_ptr<ui::BookSession>(
            std::make_unique<ui::MemorySession>(smallNursery(), QStringLiteral("Sample nursery")));
    }
    Result<std::unique_ptr<ui::BookSession>> create(const QString& name) override {
        if (name == QLatin1String("taken")) return Refusal{"taken", "there is a file of that name already"};
        return std::unique_ptr<ui::BookSession>(std::make_unique<ui::MemorySession>(HouseBook(), name));
    }
    const RecipeLibrary& recipes() override {
        static const RecipeLibrary none;
        return none;
    }
    [[nodiscard]] QString fileFilter() const override { return QStringLiteral("House books (*.wbook)"); }
};

/// The home window on the small nursery, in the light theme whatever was kept.
struct OpenWindow {
    SmallNurseryOpener opener;
    ui::MainWindow window{opener, smallNurseryToday()};

    explicit OpenWindow(QSize size = {1360, 860}) {
        window.setTheme(ui::Theme::Light);
        (void)window.openBook(QStringLiteral("sample"));
        window.resize(size);
        window.show();
    }
    template <class Widget>
    Widget* child(const char* name) {
        return window.findChild<Widget*>(QLatin1String(name));
    }
};

} // namespace warmbench::tests
