#include "tests/app/storage/postgres_server.h"

#include "app/storage/rows.h"
#include "app/storage/shared_address.h"

#include <QSqlQuery>
#include <QUuid>
#include <QVariant>

#include <algorithm>
#include <chrono>
#include <csignal>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <thread>
#include <vector>

#include <arpa/inet.h>
#include <fcntl.h>
#include <pwd.h>
#include <sys/socket.h>
#include <sys/wait.h>
#include <unistd.h>

namespace warmbench::tests {
namespace {

namespace fs = std::filesystem;

/// The folder of the newest server that is installed.
std::string installedPrograms() {
    std::vector<std::string> found;
    std::error_code none;
    for (const auto& version : fs::directory_iterator("/usr/lib/postgresql", none))
        if (fs::exists(version.path() / "bin/initdb")) found.push_back((version.path() / "bin").string());
    if (found.empty())
        throw std::runtime_error("PostgreSQL is not installed (Debian: postgresql-15), so books that are "
                                 "shared can't be tested");
    return *std::max_element(found.begin(), found.end());
}

/// A server does not run as root.
std::string ordinaryUser() {
    if (::getuid() != 0) return {};
    for (const char* name : {"postgres", "nobody"})
        if (::getpwnam(name)) return name;
    throw std::runtime_error("there is no ordinary user to run PostgreSQL as");
}

/// Starts a program as that user; it is told to end when this process does.
pid_t begin(std::vector<std::string> call, const std::string& user, const std::string& folder) {
    std::vector<std::string> whole{"setpriv", "--pdeathsig", "QUIT"};
    if (!user.empty()) {
        const std::string group = std::to_string(::getpwnam(user.c_str())->pw_gid);
        for (const std::string& word :
             {std::string("--reuid"), user, std::string("--regid"), group, std::string("--clear-groups")})
            whole.push_back(word);
    }
    whole.insert(whole.end(), call.begin(), call.end());
    std::vector<char*> words;
    for (std::string& word : whole) words.push_back(word.data());
    words.push_back(nullptr);
    const pid_t child = ::fork();
    if (child != 0) return child;
    const int log = ::open((folder + "/log").c_str(), O_WRONLY | O_CREAT | O_APPEND, 0666);
    ::dup2(log, STDOUT_FILENO);
    ::dup2(log, STDERR_FILENO);
    if (::chdir(folder.c_str()) != 0) ::_exit(126);
    ::execvp(words[0], words.data());
    ::_exit(127);
}

int ended(pid_t child) {
    int status = 0;
    while (::waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    return status;
}

/// A port of this machine that nobody listens on.
int freePort() {
    const int socket = ::socket(AF_INET, SOCK_STREAM, 0);
    sockaddr_in at{};
    at.sin_family = AF_INET;
    at.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t length = sizeof at;
    auto* address = reinterpret_cast<sockaddr*>(&at);
    const bool found = ::bind(socket, address, length) == 0 && ::getsockname(socket, address, &length) == 0;
    ::close(socket);
    if (!found) throw std::runtime_error("no port of this machine is free");
    return ntohs(at.sin_port);
}

std::string textOf(const std::string& file) {
    std::ifstream in(file);
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace

PostgresServer& PostgresServer::shared() {
    static PostgresServer server;
    return server;
}

PostgresServer::PostgresServer(Options options)
    : m_options(options), m_owner(::getpid()), m_programs(installedPrograms()), m_user(ordinaryUser()) {
    // A socket's name is at most 107 bytes long, so not under a long TMPDIR.
    std::string folder = "/tmp/books.XXXXXX";
    if (!::mkdtemp(folder.data())) throw std::runtime_error("no folder can be made in /tmp");
    m_folder = folder;
    if (!m_user.empty()) {
        const passwd* user = ::getpwnam(m_user.c_str());
        if (::chown(folder.c_str(), user->pw_uid, user->pw_gid) != 0)
            throw std::runtime_error("the folder can't be given to " + m_user);
    }
    fs::permissions(m_folder, fs::perms(0755));
    std::ofstream(m_folder + "/log");
    fs::permissions(m_folder + "/log", fs::perms(0666));
    try {
        make();
        if (options.onPort) m_port = freePort();
        if (options.speaksTls) makeCertificate();
        if (options.asksPassword || options.onPort)
            std::ofstream(m_folder + "/data/pg_hba.conf")
                << "local all keeper trust\nlocal all all scram-sha-256\n"
                << (options.speaksTls ? "hostssl" : "host") << " all all 127.0.0.1/32 scram-sha-256\n";
        start();
    } catch (...) {
        std::error_code ignored;
        fs::remove_all(m_folder, ignored);
        throw;
    }
}

PostgresServer::~PostgresServer() {
    if (::getpid() != m_owner) return;
    stop();
    std::error_code ignored;
    fs::remove_all(m_folder, ignored);
}

void PostgresServer::make() {
    const int status = ended(begin({m_programs + "/initdb", "-D", m_folder + "/data", "-U", "keeper", "-A",
                                    "trust", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync"},
                                   m_user, m_folder));
    if (status != 0) throw std::runtime_error("initdb failed: " + textOf(m_folder + "/log"));
}

void PostgresServer::makeCertificate() {
    const int status = ended(begin({"openssl", "req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2",
                                    "-subj", "/CN=localhost", "-addext", "subjectAltName=DNS:localhost",
                                    "-keyout", m_folder + "/server.key", "-out", certificate()},
                                   m_user, m_folder));
    if (status != 0) throw std::runtime_error("openssl failed: " + log());
}

std::string PostgresServer::log() const {
    return textOf(m_folder + "/log");
}

void PostgresServer::start() {
    m_server = begin({m_programs + "/postgres",
                      "-D",
                      m_folder + "/data",
                      "-k",
                      m_folder,
                      "-c",
                      m_port ? "listen_addresses=127.0.0.1" : "listen_addresses=",
                      "-p",
                      std::to_string(m_port ? m_port : 5432),
                      "-c",
                      m_options.speaksTls ? "ssl=on" : "ssl=off",
                      "-c",
                      "ssl_cert_file=" + certificate(),
                      "-c",
                      "ssl_key_file=" + m_folder + "/server.key",
                      "-c",
                      m_options.syncs ? "fsync=on" : "fsync=off",
                      "-c",
                      "max_connections=60",
                      "-c",
                      "shared_buffers=16MB"},
                     m_user, m_folder);
    for (int i = 0; i < 600; ++i) {
        // The last line of this file says what the server is at.
        if (textOf(m_folder + "/data/postmaster.pid").find("ready") != std::string::npos) return;
        if (::waitpid(m_server, nullptr, WNOHANG) == m_server) break;
        std::this_thread::sleep_for(std::chrono::milliseconds(50));
    }
    throw std::runtime_error("PostgreSQL did not start: " + textOf(m_folder + "/log"));
}

void PostgresServer::stop() {
    if (m_server == 0) return;
    ::kill(m_server, SIGQUIT);
    ended(m_server);
    m_server = 0;
}

std::string PostgresServer::address(const std::string& database, const std::string& user) const {
    return "postgresql://" + user + "@" + (m_port ? ":" + std::to_string(m_port) : "") + "/" + database +
           "?host=" + m_folder;
}

std::string PostgresServer::portAddress(const std::string& host, const std::string& database,
                                        const std::string& user) const {
    return "postgresql://" + user + "@" + host + ":" + std::to_string(m_port) + "/" + database;
}

std::string PostgresServer::newDatabase() {
    // The process stands in the name, as children of one share a server.
    const std::string name = "book_" + std::to_string(::getpid()) + "_" + std::to_string(++m_databases);
    run("postgres", "CREATE DATABASE " + name);
    return address(name);
}

std::string PostgresServer::databaseOf(const std::string& address) {
    return app::SharedAddress::read(address)->database;
}

std::string PostgresServer::ask(const std::string& database, const std::string& user,
                                const std::string& statement, std::string& answer) const {
    const QString connection = QUuid::createUuid().toString();
    std::string said;
    {
        QSqlDatabase open = QSqlDatabase::addDatabase(QStringLiteral("QPSQL"), connection);
        open.setHostName(QString::fromStdString(m_folder));
        if (m_port) open.setPort(m_port);
        open.setUserName(user.empty() ? QStringLiteral("keeper") : QString::fromStdString(user));
        open.setDatabaseName(QString::fromStdString(database));
        bool done = open.open();
        if (!done) said = app::wordsOf(open.lastError());
        QSqlQuery query(open);
        done = done && query.exec(QStringLiteral("SET search_path TO warmbench"));
        // Nothing stands in the way of who works behind the program's back.
        if (done && user.empty())
            done = query.exec(QStringLiteral("SET session_replication_role TO replica"));
        if (done && !query.exec(QString::fromStdString(statement))) said = app::wordsOf(query.lastError());
        if (done && query.next()) answer = query.value(0).toString().toStdString();
        query.clear();
        open.close();
    }
    QSqlDatabase::removeDatabase(connection);
    return said;
}

std::string PostgresServer::saidTo(const std::string& database, const std::string& user,
                                   const std::string& statement) const {
    std::string ignored;
    return ask(database, user, statement, ignored);
}

void PostgresServer::run(const std::string& database, const std::string& statement) const {
    const std::string said = saidTo(database, {}, statement);
    if (!said.empty()) throw std::runtime_error(said);
}

} // namespace warmbench::tests
