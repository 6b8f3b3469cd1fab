#pragma once

#include "tests/core/season/season_book.h"
#include "ui/shell/main_window.h"
#include "ui/shell/memory_session.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QTest>
#include <QTimer>

/// The window over a season, day by day, used as a person would.
namespace warmbench::tests {

/// Opens empty books, with the built-in recipes at hand.
class EmptyOpener : public ui::BookOpener {
public:
    Result<std::unique_ptr<ui::BookSession>> open(const QString& name) override {
        return std::unique_ptr<ui::BookSession>(
            std::make_unique<ui::MemorySession>(HouseBook(), QFileInfo(name).completeBaseName()));
    }
    Result<std::unique_ptr<ui::BookSession>> create(const QString& name) override { return open(name); }
    const RecipeLibrary& recipes() override { return testing::builtIn(); }
    [[nodiscard]] QString fileFilter() const override { return QStringLiteral("House books (*.wbook)"); }
};

struct SeasonWindow {
    EmptyOpener opener;
    ui::MainWindow window;

    /// The window on a day, with an empty book or one that was worked on before.
    explicit SeasonWindow(Day today, HouseBook kept = {}) : window(opener, today) {
        window.setTheme(ui::Theme::Light);
        window.setSession(std::make_unique<ui::MemorySession>(std::move(kept), QStringLiteral("new")));
        window.show();
    }
    [[nodiscard]] const HouseBook& book() const { return window.session()->book(); }
    template <class Widget>
    Widget* child(const char* name) {
        auto* found = window.findChild<Widget*>(QLatin1String(name));
        REQUIRE(found);
        return found;
    }
    void click(const char* button) { QTest::mouseClick(child<QPushButton>(button), Qt::LeftButton); }
    void go(const char* place) { child<QAction>(place)->trigger(); }
    /// Clicks a button that opens a dialog, and hands the dialog to `work`.
    template <class Work>
    void inDialog(const char* button, Work work) {
        bool worked = false;
        QTimer::singleShot(0, [&] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            if (!dialog) return;
            worked = true;
            work(*dialog);
            if (dialog->isVisible()) dialog->reject();
        });
        click(button);
        REQUIRE(worked);
    }
};

/// A widget of a dialog by its name.
template <class Widget>
Widget* in(QDialog& dialog, const char* name) {
    return dialog.findChild<Widget*>(QLatin1String(name));
}

/// Goes through the plan dialog: plans for half a second and accepts what is proposed.
void planAndAccept(SeasonWindow& nursery);

/// Goes to the round and looks at every container of it, those of the batch of a code where one is given;
/// finds all that it picks rooted.
void checkAll(SeasonWindow& nursery, const QString& code = {});
/// Goes to the round and does what is due, of one batch or all: weans, and pots on every container in full.
void doDue(SeasonWindow& nursery, const QString& code = {});

} // namespace warmbench::tests
