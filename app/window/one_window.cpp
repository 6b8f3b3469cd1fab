#include "app/window/one_window.h"

#include <QApplication>
#include <QSettings>

namespace warmbench::app {

OneWindow::OneWindow(ui::BookOpener& opener, Day today) : m_opener(opener), m_today(today) {
    make();
}

void OneWindow::make() {
    const QSettings kept(QStringLiteral("Warmbench"), QStringLiteral("Warmbench"));
    m_language.use(kept.value(ui::Language::key).toString());
    m_window = std::make_unique<ui::MainWindow>(m_opener, m_today);
    connect(m_window.get(), &ui::MainWindow::languageChosen, this, &OneWindow::makeAnew);
}

void OneWindow::makeAnew() {
    const bool quits = QApplication::quitOnLastWindowClosed();
    QApplication::setQuitOnLastWindowClosed(false);
    m_window->close(); // which keeps how it looked and where it was
    auto session = m_window->takeSession();
    // It has called us and may not go before it is done.
    m_window.release()->deleteLater();
    make();
    if (session) m_window->setSession(std::move(session));
    m_window->show();
    QApplication::setQuitOnLastWindowClosed(quits);
}

} // namespace warmbench::app
