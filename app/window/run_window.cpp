#include "app/window/run_window.h"

#include "app/window/last_book.h"
#include "app/window/one_window.h"
#include "ui/form/form_style.h"
#include "ui/words/wording.h"

#include <QApplication>
#include <QDate>

namespace warmbench::app {
namespace {

bool hasDisplay() {
#ifdef Q_OS_LINUX
    for (const char* name : {"QT_QPA_PLATFORM", "DISPLAY", "WAYLAND_DISPLAY"})
        if (!qEnvironmentVariableIsEmpty(name)) return true;
    return false;
#else
    return true;
#endif
}

} // namespace

Outcome runWindow(const std::string& book) {
    if (!hasDisplay()) return Refusal{"open", phrase("there is no display to open a window on")};
    int argumentCount = 1;
    char name[] = "warmbench";
    char* arguments[] = {name, nullptr};
    QApplication::setStyle(new ui::FormStyle);
    QApplication application(argumentCount, arguments);
    QApplication::setOrganizationName(QStringLiteral("Warmbench"));
    QApplication::setApplicationName(QStringLiteral("Warmbench"));
    QApplication::setApplicationVersion(QStringLiteral("0.1.0"));
    SystemKeys keys;
    LastBookOpener opener(keys);
    OneWindow one(opener, ui::dayOf(QDate::currentDate()));
    ui::MainWindow& window = one.window();
    if (!book.empty()) {
        auto session = opener.open(QString::fromStdString(book));
        if (!session) return session.refusal();
        window.setSession(std::move(*session));
    } else if (const QString last = lastBook(); !last.isEmpty()) {
        // A book that has gone meanwhile is no reason not to start.
        if (auto session = opener.open(last)) window.setSession(std::move(*session));
    }
    window.show();
    QApplication::exec();
    return std::nullopt;
}

} // namespace warmbench::app
