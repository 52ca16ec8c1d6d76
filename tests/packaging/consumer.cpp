#include "../../examples/cpp/minimal.cpp"
