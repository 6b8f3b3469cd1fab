#include "app/command/without_screen.h"

namespace warmbench::app {

std::unique_ptr<QGuiApplication> applicationWithoutScreen() {
    if (QCoreApplication::instance()) return nullptr;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    static int argumentCount = 1;
    static char name[] = "warmbench";
    static char* arguments[] = {name, nullptr};
    return std::make_unique<QGuiApplication>(argumentCount, arguments);
}

} // namespace warmbench::app
