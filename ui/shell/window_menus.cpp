#include "ui/shell/window_menus.h"

#include "ui/language/language.h"
#include "ui/words/say.h"

#include <QActionGroup>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>

namespace warmbench::ui {
namespace {

QAction* add(QMenu* menu, const char* name, const QString& words, const QKeySequence& keys = {}) {
    QAction* action = menu->addAction(words);
    action->setObjectName(QString::fromLatin1(name));
    if (!keys.isEmpty()) action->setShortcut(keys);
    return action;
}

} // namespace

WindowMenus::WindowMenus(QMainWindow& window) {
    QMenuBar& bar = *window.menuBar();
    QMenu* file = bar.addMenu(say("&File"));
    create = add(file, "new", say("&New house book…"), QKeySequence::New);
    open = add(file, "open", say("&Open a house book…"), QKeySequence::Open);
    openShared = add(file, "openShared", say("Open a &shared house book…"));
    backups = add(file, "backups", say("&Backups: look into one, go back to one…"));
    takeCopy = add(file, "takeCopy", say("Take a &copy along on a round…"));
    bringHome = add(file, "bringHome", say("Bring a &round home from a copy…"));
    saveMap = add(file, "saveMap", say("Save the &map as a picture…"));
    print = add(file, "print", say("&Print labels, lists and sheets…"), QKeySequence::Print);
    file->addSeparator();
    quit = add(file, "quit", say("&Quit"), QKeySequence::Quit);

    QMenu* edit = bar.addMenu(say("&Edit"));
    undo = add(edit, "undo", say("&Undo"), QKeySequence::Undo);
    redo = add(edit, "redo", say("&Redo"), QKeySequence::Redo);
    now = add(edit, "now", say("Back to &now from an earlier step"), QKeySequence(Qt::Key_F8));
    edit->addSeparator();
    find = add(edit, "find", say("&Find a taxon, batch, target or slot"), QKeySequence::Find);
    edit->addSeparator();
    QMenu* theme = edit->addMenu(say("&Colours"));
    auto* themes = new QActionGroup(&window);
    systemTheme = add(theme, "systemTheme", say("As on the &desktop"));
    lightTheme = add(theme, "lightTheme", say("&Light"));
    darkTheme = add(theme, "darkTheme", say("&Dark"));
    for (QAction* action : {systemTheme, lightTheme, darkTheme}) {
        action->setCheckable(true);
        themes->addAction(action);
    }
    QMenu* language = edit->addMenu(say("&Language"));
    languages = new QActionGroup(&window);
    languages->addAction(add(language, "systemLanguage", say("As on the &desktop")))->setData(QString());
    for (const QString& code : Language::codes()) {
        QAction* one = language->addAction(Language::ownName(code));
        one->setObjectName(QStringLiteral("language_") + code);
        one->setData(code);
        languages->addAction(one);
    }
    for (QAction* action : languages->actions()) action->setCheckable(true);
    fahrenheit = add(edit, "fahrenheit", say("Temperatures in °&F"));
    fahrenheit->setCheckable(true);

    places = bar.addMenu(say("P&laces"));

    QMenu* house = bar.addMenu(say("&House"));
    zoomIn = add(house, "zoomIn", say("Zoom &in"), QKeySequence::ZoomIn);
    zoomOut = add(house, "zoomOut", say("Zoom &out"), QKeySequence::ZoomOut);
    fit = add(house, "fit", say("Show &everything"), QKeySequence(Qt::CTRL | Qt::Key_0));
    house->addSeparator();
    dayBack = add(house, "dayBack", say("A day &back"), QKeySequence(Qt::ALT | Qt::Key_Left));
    dayOn = add(house, "dayOn", say("A day o&n"), QKeySequence(Qt::ALT | Qt::Key_Right));
    today = add(house, "today", say("&Today"), QKeySequence(Qt::ALT | Qt::Key_Home));
    play = add(house, "play", say("&Play the days"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_P));

    batches = bar.addMenu(say("&Batches"));
    showBatch = add(batches, "showBatch", say("Show the selected batch on the &map"));
    move = add(batches, "moveBatch", say("Put the selected batch &elsewhere"),
               QKeySequence(Qt::CTRL | Qt::Key_M));
    split = add(batches, "splitBatch", say("Put &part of the selected batch elsewhere"));
    batches->addSeparator();
    strike =
        add(batches, "strike", say("&Strike the selected batch today"), QKeySequence(Qt::CTRL | Qt::Key_T));
    check = add(batches, "checkBatch", say("&Check the selected batch on the round"));
    wean = add(batches, "weanBatch", say("&Wean the selected batch today"));
    potOn = add(batches, "potOnBatch", say("Pot the selected batch &on"));
    batches->addSeparator();
    labels = add(batches, "printLabels", say("Print the selected batch's &labels…"));
    removeBatch = add(batches, "removeBatch", say("&Remove the selected planned batch"));

    QMenu* plan = bar.addMenu(say("&Plan", "menu"));
    planDays = add(plan, "planDays", say("&Plan the striking…"), QKeySequence(Qt::CTRL | Qt::Key_L));

    QMenu* help = bar.addMenu(say("He&lp"));
    keys = add(help, "keys", say("&Keys"), QKeySequence::HelpContents);
    about = add(help, "about", say("&About Warmbench"));
}

} // namespace warmbench::ui
