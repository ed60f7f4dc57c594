"""One request in, pages and an account out, for every kind of page: what command line, browser and ``import`` call.

- ``choices``: what is chosen by each who may choose, and the one place where one choice is laid over another;
- ``request``: what shall be made, as one frozen value;
- ``make``: pages one by one, as they are asked for, and what became of everyone;
- ``account``: who was made, who was not and why, as data;
- ``from_book``: a request's members from a class's file.

A child whose page cannot be made is set down with the reason, and all others are still made. No clock.
"""
