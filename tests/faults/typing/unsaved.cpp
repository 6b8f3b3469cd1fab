#include "app/window/file_session.h"
#include "tests/app/storage/book_folder.h"
#include "tests/app/window/comes.h"
#include "tests/support/small_nursery.h"
#include "ui/shell/main_window.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QComboBox>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <filesystem>
#include <fstream>

#include <sys/wait.h>
#include <unistd.h>

using namespace warmbench;
using namespace warmbench::tests;
using app::OpenMode;

namespace {

namespace fs = std::filesystem;

/// How many programs that typed were killed, and how many of their forms stood there again as typed; told
/// when all tests are over.
struct Counts {
    int killed = 0;
    int back = 0;

    Counts() = default;
    Counts(const Counts&) = delete;
    Counts& operator=(const Counts&) = delete;
    ~Counts() {
        std::printf(
            "%d programs killed while somebody typed; %d forms asked for again, and as they were typed\n",
            killed, back);
    }
};

Counts counts;

/// A form of a killed program is there again: so many of those that are asked for.
void cameBack(bool asTyped) {
    CHECK(asTyped);
    counts.back += asTyped ? 1 : 0;
}

/// A program that types into a form of a book and is killed with this.
class Typing {
public:
    Typing(const std::string& book, const char* form) {
        int ends[2];
        REQUIRE(::pipe(ends) == 0);
        m_child = ::fork();
        if (m_child == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            ::close(ends[0]);
            ::close(ends[1]);
            ::execl(FAULTS_TYPING, FAULTS_TYPING, book.c_str(), form, nullptr);
            ::_exit(127);
        }
        ::close(ends[1]);
        std::string said(6, ' ');
        REQUIRE(::read(ends[0], said.data(), said.size()) == 6);
        ::close(ends[0]);
        REQUIRE(said == "typed\n");
    }
    Typing(const Typing&) = delete;
    Typing& operator=(const Typing&) = delete;
    ~Typing() { kill(); }
    void kill() {
        if (m_child <= 0) return;
        ::kill(m_child, SIGKILL);
        ::waitpid(m_child, nullptr, 0);
        m_child = 0;
        ++counts.killed;
    }

private:
    pid_t m_child = 0;
};

std::string nurseryFile(const BookFolder& folder) {
    const std::string file = folder.path("nursery.warmbench");
    REQUIRE(!app::BookFile::create(file, smallNursery()));
    return file;
}

struct Opened {
    NoKeys keys;
    app::FileOpener opener{keys};
    ui::MainWindow window{opener, smallNurseryToday()};

    explicit Opened(const std::string& file) {
        REQUIRE(!window.openBook(QString::fromStdString(file)));
        window.show();
    }
    template <class Widget>
    Widget* child(const char* name) {
        return window.findChild<Widget*>(QLatin1String(name));
    }
    bool offers() { return child<QFrame>("draftBar")->isVisible(); }
    void goOn() { child<QPushButton>("draftGoOn")->click(); }
};

/// Has the dialog that comes up next looked at, and put in.
void inNextDialog(const std::function<void(QDialog&)>& look) {
    QTimer::singleShot(0, [look] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        if (!dialog) return;
        look(*dialog);
        dialog->accept();
        if (dialog->isVisible()) dialog->done(QDialog::Rejected); // asks nothing
    });
}

} // namespace

TEST_CASE("A target that was being typed when the program was killed is offered again and put in") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    Typing(file, "target").kill();
    REQUIRE(opened(file, OpenMode::Read)->book() == smallNursery());
    Opened again(file);
    REQUIRE(again.offers());
    CHECK(again.child<QLabel>("draftWords")->text().contains(QStringLiteral("a new target")));
    bool looked = false;
    inNextDialog([&](QDialog& dialog) {
        looked = true;
        cameBack(dialog.findChild<QLineEdit*>(QStringLiteral("taxonName"))->text() ==
                     QStringLiteral("Olearia x haastii") &&
                 dialog.findChild<QSpinBox*>(QStringLiteral("targetPlants"))->value() == 77 &&
                 dialog.findChild<QLineEdit*>(QStringLiteral("targetNote"))->text() ==
                     QStringLiteral("for the hedge"));
    });
    again.goOn();
    REQUIRE(looked);
    CHECK_FALSE(again.offers());
    const auto& targets = again.window.session()->book().all<Target>();
    CHECK(std::any_of(targets.begin(), targets.end(),
                      [](const auto& one) { return one.second.note == "for the hedge"; }));
    REQUIRE(comes([&] { return !fs::exists(file + ".unsaved"); }));
}

TEST_CASE("A stock that was being typed comes back with all of its flushes") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    Typing(file, "stock").kill();
    Opened again(file);
    REQUIRE(again.offers());
    bool looked = false;
    inNextDialog([&](QDialog& dialog) {
        looked = true;
        auto* second = dialog.findChild<QSpinBox*>(QStringLiteral("flushCuttings2"));
        REQUIRE(second);
        cameBack(second->value() == 9 && dialog.findChild<QLineEdit*>(QStringLiteral("stockPlace"))->text() ==
                                             QStringLiteral("behind the frames"));
    });
    again.goOn();
    CHECK(looked);
}

TEST_CASE("A pasted list comes back as it was being read") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    Typing(file, "list").kill();
    Opened again(file);
    REQUIRE(again.offers());
    CHECK(again.child<QLabel>("draftWords")->text().contains(QStringLiteral("a pasted list")));
    bool looked = false;
    inNextDialog([&](QDialog& dialog) {
        looked = true;
        cameBack(dialog.findChild<QPlainTextEdit*>(QStringLiteral("listText"))
                     ->toPlainText()
                     .endsWith(QStringLiteral("for the bank")) &&
                 dialog.findChild<QComboBox*>(QStringLiteral("listOrder"))->currentIndex() == 2 &&
                 dialog.findChild<QComboBox*>(QStringLiteral("listColumn4"))->currentIndex() == 0);
    });
    again.goOn();
    REQUIRE(looked);
    CHECK_FALSE(again.offers());
}

TEST_CASE("Hands that were being typed come back over the nursery") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    Typing(file, "nursery").kill();
    Opened again(file);
    REQUIRE(again.offers());
    again.goOn();
    cameBack(again.child<QSpinBox>("hands2")->value() == 417);
    again.child<QPushButton>("keepThing")->click();
    CHECK(again.window.session()->book().nursery().strikesByWeekday[2] == 417);
    CHECK_FALSE(again.offers());
}

TEST_CASE("A round's line that was half typed is there again, and written down once") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    Typing(file, "round").kill();
    Opened again(file);
    REQUIRE(again.offers());
    again.goOn();
    cameBack(again.child<QLineEdit>("checkRooted")->text() == QStringLiteral("3") &&
             again.child<QLineEdit>("checkNote")->text() == QStringLiteral("half a line"));
    // Others' changes, and a step along the walk and back, leave it as it is.
    REQUIRE(!opened(file, OpenMode::Write)->perform(handsOf(1)));
    REQUIRE(comes([&] { return again.window.session()->book().all<HandDay>().size() == 1; }));
    CHECK(again.child<QLineEdit>("checkNote")->text() == QStringLiteral("half a line"));
    const auto checks = again.window.session()->book().all<RootCheck>().size();
    // What looks unlikely is asked about once.
    for (int i = 0; i < 2 && again.window.session()->book().all<RootCheck>().size() == checks; ++i)
        again.child<QPushButton>("checkEnter")->click();
    INFO(again.child<QLabel>("checkWords")->text().toStdString());
    REQUIRE(again.window.session()->book().all<RootCheck>().size() == checks + 1);
    CHECK(again.child<QLineEdit>("checkNote")->text().isEmpty());
    REQUIRE(comes([&] { return !fs::exists(file + ".unsaved"); }));
}

TEST_CASE("A house's form comes back, and what is thrown away does not come again") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    Typing(file, "house").kill();
    {
        Opened again(file);
        REQUIRE(again.offers());
        again.goOn();
        cameBack(again.child<QLineEdit>("houseName")->text() == QStringLiteral("Tunnel 9"));
        again.window.close(); // with the form as it is
    }
    Opened third(file);
    REQUIRE(third.offers());
    third.child<QPushButton>("draftDrop")->click();
    CHECK_FALSE(third.offers());
    REQUIRE(comes([&] { return !fs::exists(file + ".unsaved"); }));
}

TEST_CASE("What is typed in a program that runs is not offered in another") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    Typing first(file, "house");
    {
        Opened second(file);
        CHECK_FALSE(second.offers());
    }
    Typing(file, "target").kill();
    CHECK(fs::exists(file + ".unsaved-2"));
    Opened third(file);
    REQUIRE(third.offers());
    CHECK(third.child<QLabel>("draftWords")->text().contains(QStringLiteral("a new target")));
}

TEST_CASE("A damaged file of drafts, or a folder that can't be written, hinders nobody") {
    const BookFolder folder;
    const std::string file = nurseryFile(folder);
    const std::string whole = R"({"drafts":[{"place":"targets","key":"0","fields":{"targetNote":5}},)"
                              R"({"place":"targets","key":7},3],"more":null})";
    for (const std::size_t length : {whole.size(), whole.size() / 2, std::size_t{0}}) {
        std::ofstream(file + ".unsaved") << whole.substr(0, length);
        Opened again(file);
        CHECK(again.offers() == (length == whole.size()));
        bool looked = false;
        inNextDialog([&](QDialog& dialog) {
            looked = true;
            CHECK(dialog.findChild<QLineEdit*>(QStringLiteral("targetNote"))->text().isEmpty());
            dialog.reject();
        });
        if (again.offers()) again.goOn();
        CHECK(looked == (length == whole.size()));
    }
}
